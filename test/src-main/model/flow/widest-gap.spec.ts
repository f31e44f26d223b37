import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { widestGapDays } from '../../../../src-main/model/flow/widest-gap.ts';

/** Histories that each carry gaps up to their own. */
const upTo =
  (own: readonly number[]) =>
  (history: number, days: number): boolean =>
    days <= own[history]!;

describe('widestGapDays()', () => {
  it.each([
    { what: 'no wall at all is needed', own: [30, 30, 30], widest: 30 },
    { what: 'a wall every night is not enough', own: [0, 0, 0], widest: 0 },
    { what: 'all carry the same', own: [7, 7, 7], widest: 7 },
    { what: 'none may fail', own: [9, 4, 7], widest: 4 },
  ])('is $widest when $what', ({ own, widest }) => {
    expect(widestGapDays(30, upTo(own), own.length, 1)).toBe(widest);
  });

  it('lets as many histories fail as the confidence allows', () => {
    const own = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
    expect(widestGapDays(30, upTo(own), 10, 0.9)).toBe(2);
    expect(widestGapDays(30, upTo(own), 10, 0.5)).toBe(6);
  });

  it('is what trying every gap gives, and walks less', () => {
    const histories = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(histories, fc.double({ min: 0.5, max: 0.99, noNaN: true }), (own, confidence) => {
        let walks = 0;
        const found = widestGapDays(40, (...at) => ((walks += 1), upTo(own)(...at)), own.length, confidence);
        const allowed = Math.floor(own.length * (1 - confidence) + 1e-9);
        const carried = (days: number) => own.filter((each) => each < days).length <= allowed;
        const all = Array.from({ length: 40 }, (_, day) => day + 1).filter(carried);
        expect(found).toBe(Math.max(0, ...all));
        expect(walks).toBeLessThanOrEqual(7 * own.length);
      }),
      { seed: 11, numRuns: 300 },
    );
  });
});
