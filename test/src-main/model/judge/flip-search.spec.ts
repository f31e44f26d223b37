import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  firstBracket,
  halvingsOf,
  narrowed,
  nextTry,
  type Bracket,
  type Grain,
} from '../../../../src-main/model/judge/flip-search.ts';

/** Halves a bracket to its grain, and counts the tries. */
function settled(start: Bracket, grain: Grain, holds: (value: number) => boolean) {
  let bracket = start;
  let tries = 0;
  for (let value = nextTry(bracket, grain); value !== null; value = nextTry(bracket, grain)) {
    bracket = narrowed(bracket, { value, holds: holds(value) });
    tries += 1;
  }
  return { bracket, tries };
}

describe('firstBracket()', () => {
  const tried = (...holds: readonly boolean[]) => holds.map((each, value) => ({ value, holds: each }));

  it('is none where the order holds all the way, or not even at the start', () => {
    expect(firstBracket(tried(true, true, true))).toBeNull();
    expect(firstBracket(tried(false, true))).toBeNull();
    expect(firstBracket([])).toBeNull();
  });

  it('holds in the first change on the way out, whatever comes after', () => {
    expect(firstBracket(tried(true, true, false, true, false))).toEqual({ holds: 1, flips: 2 });
  });
});

describe('bisection of a flip', () => {
  it.each([
    [{ holds: 1, flips: 1.15 }, 1.0725],
    [{ holds: 1, flips: 0.85 }, 0.9],
    [{ holds: 0, flips: -1 }, -0.333],
  ])('finds one between the ends of %o', (start, edge) => {
    const outward = Math.sign(start.flips - start.holds);
    const grain = { tolerance: 0.006, whole: false };
    const { bracket } = settled(start, grain, (value) => (value - edge) * outward < 0);
    expect(Math.abs(bracket.flips - bracket.holds)).toBeLessThanOrEqual(0.006);
    expect((edge - bracket.holds) * outward).toBeGreaterThan(0);
    expect((bracket.flips - edge) * outward).toBeGreaterThanOrEqual(0);
  });

  it('tries whole days only, and ends on two that follow each other', () => {
    const seen: number[] = [];
    const { bracket } = settled({ holds: 4, flips: 14 }, { tolerance: 1, whole: true }, (value) => {
      seen.push(value);
      return value < 6;
    });
    expect(bracket).toEqual({ holds: 5, flips: 6 });
    expect(seen.every(Number.isInteger)).toBe(true);
  });

  it('ends on two values near each other between which the order truly changes, in no more tries than told', () => {
    const grainOf = (whole: boolean): Grain => ({ tolerance: whole ? 1 : 0.3, whole });
    fc.assert(
      fc.property(
        fc.integer({ min: -40, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        fc.boolean(),
        fc.boolean(),
        fc.infiniteStream(fc.boolean()),
        (holds, apart, up, whole, luck) => {
          const start = { holds, flips: up ? holds + apart : holds - apart };
          // Any order between the ends, as long as it stays what it was once seen.
          const known = new Map([
            [start.holds, true],
            [start.flips, false],
          ]);
          const at = (value: number): boolean => {
            const seen = known.get(value) ?? luck.next().value === true;
            known.set(value, seen);
            return seen;
          };
          const grain = grainOf(whole);
          const { bracket, tries } = settled(start, grain, at);
          expect([at(bracket.holds), at(bracket.flips)]).toEqual([true, false]);
          expect(Math.abs(bracket.flips - bracket.holds)).toBeLessThanOrEqual(grain.tolerance);
          expect(bracket.flips > bracket.holds).toBe(up);
          expect(tries).toBeLessThanOrEqual(halvingsOf(start, grain));
        },
      ),
      { seed: 3, numRuns: 100, endOnFailure: true },
    );
  });
});
