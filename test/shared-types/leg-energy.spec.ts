import { describe, expect, it } from 'vitest';
import { legEnergies } from '../../shared-types/leg-energy.ts';
import { scenarioFixture } from '../support/comparison-fixture.ts';
import { expectNear } from '../support/near.ts';

const flows = ['demand', 'wall', 'panel', 'hub', 'lost', 'spilled', 'unserved'] as const;

describe('legEnergies()', () => {
  it('is nothing of a tour without legs', () => expect(legEnergies({ legs: [], days: [] })).toEqual([]));

  it('is the mean of the days of each leg, and of no other', () => {
    const scenario = scenarioFixture('banks');
    const [leg] = scenario.legs;
    const [day] = scenario.days;
    const legs = [
      { ...leg!, leg: 'Coast', days: 1 },
      { ...leg!, leg: 'Passes', days: 2 },
    ];
    const days = [30, 10, 20].map((demand) => ({ ...day!, demand, wall: 3 * demand }));
    expect(legEnergies({ legs, days })).toMatchObject([
      { leg: 'Coast', days: 1, demand: 30, wall: 90 },
      { leg: 'Passes', days: 2, demand: 15, wall: 45 },
    ]);
  });

  it.each(['banks', 'panel', 'hub', 'mix'] as const)('adds up to the days of the tour: %s', (method) => {
    const scenario = scenarioFixture(method);
    for (const flow of flows) {
      const byLeg = legEnergies(scenario).reduce((sum, energy) => sum + energy[flow] * energy.days, 0);
      const byDay = scenario.days.reduce((sum, day) => sum + day[flow], 0);
      expectNear(byLeg, byDay, 1e-9 * Math.max(1, byDay), `${flow} over the tour, Wh`);
    }
  });
});
