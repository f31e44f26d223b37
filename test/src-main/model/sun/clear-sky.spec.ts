import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  absoluteAirMass,
  clearBeamWm2,
  clearGlobalWm2,
  relativeAirMass,
  type ClearSky,
} from '../../../../src-main/model/sun/clear-sky.ts';

const sky: ClearSky = { heightM: 0, turbidity: 3, normalWm2: 1367 };

describe('a cloudless sky', () => {
  it('keeps its beam within its global radiation', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.002, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 7, noNaN: true }),
        fc.double({ min: -450, max: 6000, noNaN: true }),
        (cosZenith, turbidity, heightM) => {
          const air = absoluteAirMass((Math.acos(cosZenith) * 180) / Math.PI, heightM);
          const clear = { ...sky, turbidity, heightM };
          const global = clearGlobalWm2(clear, cosZenith, air);
          expect(global).toBeGreaterThan(0);
          expect(clearBeamWm2(clear, cosZenith, air) * cosZenith).toBeLessThanOrEqual(global);
        },
      ),
    );
  });

  it('darkens with haze and brightens with height', () => {
    const global = (change: Partial<ClearSky>): number => clearGlobalWm2({ ...sky, ...change }, 0.7, 1.4);
    expect(global({ turbidity: 5 })).toBeLessThan(global({}));
    expect(global({ heightM: 3000 })).toBeGreaterThan(global({}));
  });
});

describe('air mass', () => {
  it('grows to the horizon and shrinks with height', () => {
    const zeniths = [0, 30, 60, 80, 88, 90].map(relativeAirMass);
    expect(zeniths.toSorted((a, b) => a - b)).toEqual(zeniths);
    expect(absoluteAirMass(60, 4000)).toBeLessThan(absoluteAirMass(60, 0));
  });
});
