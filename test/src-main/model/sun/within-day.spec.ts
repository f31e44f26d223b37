import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadDay } from '../../../../src-main/model/sun/within-day.ts';
import { expectNear } from '../../../support/near.ts';

const hourAngles = Float64Array.from({ length: 96 }, (_, step) => (((step + 0.5) / 4 - 12) * Math.PI) / 12);
const total = (watts: Float64Array): number => watts.reduce((sum, each) => sum + each, 0) / 4;

describe('spreadDay()', () => {
  it('gives no light in polar night', () => {
    const { globalWm2, diffuseWm2 } = spreadDay(hourAngles, 0.25, 0, 5000, 0.5);
    expect(Math.max(...globalWm2, ...diffuseWm2)).toBe(0);
  });

  it('adds up to the day exactly and keeps diffuse within global', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: Math.PI, noNaN: true }),
        fc.double({ min: 0, max: 9000, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (sunset, radiation, share) => {
          const { globalWm2, diffuseWm2 } = spreadDay(hourAngles, 0.25, sunset, radiation, share);
          expectNear(total(globalWm2), radiation, 1e-9 * radiation + 1e-9, 'global, Wh/m2');
          expect(total(diffuseWm2)).toBeLessThanOrEqual(radiation * share + 1e-6);
          diffuseWm2.forEach((diffuse, step) => expect(diffuse).toBeLessThanOrEqual(globalWm2[step]!));
        },
      ),
    );
  });

  it('is brightest at solar noon and dark before sunrise', () => {
    const { globalWm2 } = spreadDay(hourAngles, 0.25, Math.PI / 2, 5000, 0.4);
    expect(Math.max(...globalWm2)).toBe(globalWm2[48]);
    expect(globalWm2[20]).toBe(0);
  });
});
