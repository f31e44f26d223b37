import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  alternatorOutput,
  bestLoadOhm,
  drawnW,
  electricalRadPerS,
  fittedAlternator,
  ratedLoadOhm,
  type Alternator,
} from '../../../../src-main/model/ride/alternator.ts';
import { expectNear } from '../../../support/near.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const anyRatedW = between(0.5, 12);
const anyWheelM = between(0.9, 2.5);
const anyRadPerS = fc.oneof(fc.constant(0), between(0.001, 2000));
const anyLoadOhm = between(0.1, 1000);
const anySeriesF = fc.oneof(fc.constant(0), between(1e-9, 5e-3));
const anyAlternator: fc.Arbitrary<Alternator> = fc
  .tuple(anyRatedW, anyWheelM)
  .map(([ratedW, wheelM]) => fittedAlternator(ratedW, wheelM));
const anyLoad = fc.constantFrom('rated', 'tracking');

const ratedOhm = 12;
const threeW = fittedAlternator(3, 2.155);

describe('alternatorOutput()', () => {
  it('gives nothing at rest, with a capacitor or without', () => {
    const nothing = { currentA: 0, voltageV: 0, powerW: 0, copperW: 0 };
    expect(alternatorOutput(0, ratedOhm, threeW)).toEqual(nothing);
    expect(alternatorOutput(0, ratedOhm, threeW, 220e-6)).toEqual(nothing);
  });
  it('gives next to nothing through a tiny capacitor', () => {
    expect(alternatorOutput(150, ratedOhm, threeW, 1e-9).powerW).toBeLessThan(1e-9);
  });
  it('is the EMF over the resistances at resonance', () => {
    // At 100 rad/s 0.15 H have 15 ohm, and so has a capacitor of 1 / 1500 F: 9 V over 3 + 12 ohm.
    const out = alternatorOutput(100, ratedOhm, threeW, 1 / 1500);
    expectNear(out.currentA, 0.6, 1e-12, 'current, A');
    expectNear(out.voltageV, 7.2, 1e-12, 'voltage, V');
    expectNear(out.powerW, 4.32, 1e-12, 'power, W');
    expectNear(out.copperW, 1.08, 1e-12, 'lost in copper, W');
  });
  it('never gives more current than EMF over inductance', () => {
    fc.assert(
      fc.property(anyAlternator, anyRadPerS, anyLoadOhm, (alternator, radPerS, loadOhm) => {
        const limitA = alternator.emfVsPerRad / alternator.inductanceH;
        const { currentA } = alternatorOutput(radPerS, loadOhm, alternator);
        expect(currentA).toBeLessThanOrEqual(limitA * (1 + 1e-12));
      }),
    );
  });
  it('gives more with speed where no capacitor is in series', () => {
    fc.assert(
      fc.property(anyAlternator, anyRadPerS, anyLoadOhm, (alternator, radPerS, loadOhm) => {
        const here = alternatorOutput(radPerS, loadOhm, alternator).powerW;
        expect(alternatorOutput(radPerS + 1, loadOhm, alternator).powerW).toBeGreaterThan(here);
      }),
    );
  });
});

describe('bestLoadOhm()', () => {
  it('is the winding alone at rest', () => expect(bestLoadOhm(0, threeW)).toBe(3));
  it('draws no less than any other load', () => {
    fc.assert(
      fc.property(
        anyAlternator,
        anyRadPerS,
        anyLoadOhm,
        anySeriesF,
        (alternator, radPerS, loadOhm, seriesF) => {
          const best = bestLoadOhm(radPerS, alternator, seriesF);
          const most = alternatorOutput(radPerS, best, alternator, seriesF).powerW;
          const other = alternatorOutput(radPerS, loadOhm, alternator, seriesF).powerW;
          expect(other).toBeLessThanOrEqual(most * (1 + 1e-9) + 1e-12);
        },
      ),
    );
  });
});

describe('fittedAlternator()', () => {
  it('gives a rating’s share of 3 W, whatever the rating and wheel', () => {
    fc.assert(
      fc.property(anyRatedW, anyWheelM, between(1, 60), (ratedW, wheelM, kmh) => {
        const fitted = fittedAlternator(ratedW, wheelM);
        const out = alternatorOutput(electricalRadPerS(kmh, wheelM, fitted), ratedLoadOhm(ratedW), fitted);
        const three = alternatorOutput(electricalRadPerS(kmh, 2.155, threeW), ratedOhm, threeW);
        expectNear(out.voltageV, three.voltageV, 1e-9, 'voltage, V');
        expectNear(out.powerW, (three.powerW * ratedW) / 3, 1e-9, 'power, W');
      }),
    );
  });
  it('gives more in a smaller wheel than the one it is rated for', () => {
    const watts = (wheelM: number): number =>
      alternatorOutput(electricalRadPerS(15, wheelM, threeW), ratedOhm, threeW).powerW;
    expect(watts(1.33)).toBeGreaterThan(watts(2.155));
  });
});

describe('electricalRadPerS()', () => {
  it('is nothing at rest', () => expect(electricalRadPerS(0, 2.155, threeW)).toBe(0));
  it('is 26 pi for each turn a second', () => {
    // 7.2 km/h on a wheel of 2 m: one turn a second, 13 pole pairs.
    expectNear(electricalRadPerS(7.2, 2, threeW), 26 * Math.PI, 1e-12, 'angular speed, rad/s');
  });
});

describe('drawnW()', () => {
  it.each(['rated', 'tracking'] as const)('draws nothing at rest under a %s load', (load) => {
    expect(drawnW(0, load, ratedOhm, threeW, 0).electricalW).toBe(0);
    expect(drawnW(0, load, ratedOhm, threeW, 220e-6).electricalW).toBe(0);
  });
  it('loses the winding’s part of the resistances', () => {
    expectNear(drawnW(150, 'rated', ratedOhm, threeW, 0).windingEfficiency, 12 / 15, 1e-12, 'rated');
    const best = bestLoadOhm(150, threeW);
    const { windingEfficiency } = drawnW(150, 'tracking', ratedOhm, threeW, 0);
    expectNear(windingEfficiency, best / (best + 3), 1e-12, 'tracking');
  });
  it('takes the lighter load where no more can be passed on', () => {
    // 220 uF tune a 3 W hub at 16.5 km/h; held at the untuned best of 4.18 W, which 52.3 ohm draw: 4.42 W of the wheel.
    const radPerS = electricalRadPerS(16.5, 2.155, threeW);
    const { electricalW, windingEfficiency } = drawnW(radPerS, 'tracking', ratedOhm, threeW, 220e-6);
    expectNear(electricalW, 4.18, 0.02, 'electrical, W');
    expectNear(electricalW / windingEfficiency, 4.42, 0.02, 'mechanical, W');
  });
  it('balances at any power below the most', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 600, noNaN: true }),
        fc.double({ min: 0.05, max: 0.999, noNaN: true }),
        (radPerS, share) => {
          const most = drawnW(radPerS, 'tracking', ratedOhm, threeW, 0).electricalW;
          const held = drawnW(radPerS, 'tracking', ratedOhm, threeW, 0, most * share);
          const loadOhm = (3 * held.windingEfficiency) / (1 - held.windingEfficiency);
          const drawn = alternatorOutput(radPerS, loadOhm, threeW);
          expectNear(drawn.powerW, most * share, 1e-6 * most, 'drawn by that load, W');
          expect(loadOhm).toBeGreaterThanOrEqual(bestLoadOhm(radPerS, threeW) * (1 - 1e-9));
        },
      ),
    );
  });
  it('never draws less by following the load than by its rated one', () => {
    fc.assert(
      fc.property(
        anyAlternator,
        anyRadPerS,
        anyLoadOhm,
        anySeriesF,
        (alternator, radPerS, loadOhm, seriesF) => {
          const rated = drawnW(radPerS, 'rated', loadOhm, alternator, seriesF).electricalW;
          const followed = drawnW(radPerS, 'tracking', loadOhm, alternator, seriesF).electricalW;
          expect(rated).toBeLessThanOrEqual(followed * (1 + 1e-9) + 1e-12);
        },
      ),
    );
  });
  it('is never credited more by tuning than the best load draws', () => {
    fc.assert(
      fc.property(anyAlternator, anyRadPerS, anyLoad, anySeriesF, (alternator, radPerS, load, seriesF) => {
        const tuned = drawnW(radPerS, load, ratedOhm, alternator, seriesF).electricalW;
        const untuned = drawnW(radPerS, 'tracking', ratedOhm, alternator, 0).electricalW;
        expect(tuned).toBeLessThanOrEqual(untuned * (1 + 1e-12));
      }),
    );
  });
  it('loses at most half in the winding when it follows the load', () => {
    fc.assert(
      fc.property(anyAlternator, anyRadPerS, anySeriesF, (alternator, radPerS, seriesF) => {
        const { windingEfficiency } = drawnW(radPerS, 'tracking', ratedOhm, alternator, seriesF);
        expect(windingEfficiency).toBeGreaterThanOrEqual(0.5 - 1e-12);
        expect(windingEfficiency).toBeLessThan(1);
      }),
    );
  });
});
