import { describe, expect, it } from 'vitest';
import {
  energyOfAll,
  energyOfOne,
  givingSources,
  namedDevices,
  sumWh,
  type DailyEnergy,
} from '../../../../src-renderer/views/trade-offs/daily-energy.ts';
import { scenarioFixture } from '../../../support/comparison-fixture.ts';
import { expectNear } from '../../../support/near.ts';

const wordsOf = (energy: DailyEnergy): string[] => givingSources(energy).map(({ words }) => words);
const toleranceWh = 1e-9;

describe('energyOfAll()', () => {
  it('parts what walls give by where it goes, and loses none of it', () => {
    const scenario = scenarioFixture('banks');
    const [into, through] = energyOfAll(scenario).sources;
    expect([into?.words, through?.words]).toEqual(['Walls, into devices', 'Walls, through banks']);
    scenario.days.forEach(({ wall }, day) =>
      expectNear(into!.wh[day]! + through!.wh[day]!, wall, toleranceWh, 'from walls, Wh'),
    );
  });

  it('offers only sources that give something', () => {
    expect(wordsOf(energyOfAll(scenarioFixture('hub')))).toEqual([
      'Walls, into devices',
      'Walls, through banks',
      'The hub',
    ]);
  });
});

describe('energyOfOne()', () => {
  it('accounts for all that the device was served', () => {
    const scenario = scenarioFixture('mix');
    for (const named of namedDevices(scenario.devices)) {
      const energy = energyOfOne(scenario, named);
      const served = sumWh(energy.demandWh) - sumWh(energy.unservedWh);
      const reached = energy.sources.reduce((sum, { wh }) => sum + sumWh(wh), 0);
      expectNear(reached, served, toleranceWh, `reached ${named.name}, Wh`);
    }
  });

  it('tells what was stored before the tour from what came on it', () => {
    const scenario = scenarioFixture('panel');
    const energy = energyOfOne(scenario, namedDevices(scenario.devices)[0]!);
    expect(wordsOf(energy)).toEqual([
      'Walls, directly',
      'Walls, through banks',
      'The panel',
      'Banks as filled before the tour',
    ]);
  });
});

describe('namedDevices()', () => {
  it('tells two of a kind apart', () => {
    const [phone, unit] = scenarioFixture('hub').devices;
    expect(namedDevices([phone!, unit!, phone!, phone!]).map(({ name }) => name)).toEqual([
      'Phone',
      'Navigation unit',
      'Phone (2)',
      'Phone (3)',
    ]);
  });
});
