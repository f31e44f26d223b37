import { describe, expect, it } from 'vitest';
import { panelHistories } from '../../../../../src-main/model/flow/histories/panel-histories.ts';
import type { PanelModel } from '../../../../../src-main/model/sun/panel.ts';
import { expectNear } from '../../../../support/near.ts';
import { climateAt, laidOn, panel20, skiesOf, sunAt } from '../../../../support/sun-fixture.ts';

const [days, histories, lightSteps] = [3, 40, 48];
const sun = sunAt(climateAt(45, 0.5), '2027-06-10', days, lightSteps);
const skies = skiesOf(sun, histories);
const shine = (panels: readonly PanelModel[] = [panel20], stepsPerDay = lightSteps) =>
  panelHistories(laidOn(sun, panels), sun, skies, stepsPerDay);
const wh = (watts: ArrayLike<number>, stepsPerDay = lightSteps): number =>
  (Array.from(watts).reduce((sum, each) => sum + each, 0) * 24) / stepsPerDay;

describe('panelHistories()', () => {
  it('is dark in every history without a panel', () => {
    const { byHistory, meanW } = shine([], 24);
    expect(byHistory).toHaveLength(histories);
    expect(byHistory.every((watts) => watts.length === days * 24 && wh(watts) === 0)).toBe(true);
    expect(wh(meanW)).toBe(0);
  });

  it('differs from history to history', () => {
    expect(new Set(shine().byHistory.map((watts) => wh(watts))).size).toBe(histories);
  });

  it('has the mean of its histories', () => {
    const { byHistory, meanW } = shine();
    const mean = byHistory.reduce((sum, watts) => sum + wh(watts), 0) / histories;
    // Histories are kept in single precision.
    expectNear(wh(meanW), mean, 1e-6 * mean, 'mean, Wh');
  });

  it('adds up what several panels give', () => {
    const small = { ...panel20, ratedW: 8, outputW: 5 };
    const [one, other, both] = [[panel20], [small], [panel20, small]].map((panels) =>
      wh(shine(panels).byHistory[7]!),
    );
    expectNear(both!, one! + other!, 1e-6 * both!, 'both, Wh');
  });

  it('gives the same energy in coarser steps of the walk', () => {
    const fine = shine().byHistory;
    shine([panel20], 24).byHistory.forEach((watts, history) =>
      expectNear(wh(watts, 24), wh(fine[history]!), 1e-6 * wh(watts, 24), 'history, Wh'),
    );
  });
});
