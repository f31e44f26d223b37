import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  highestCarried,
  highestMonotone,
  rungAtLeast,
  topRung,
  useLadder,
} from '../../../../../src-main/model/judge/kit-search/rung-margin.ts';

const inOrder = (count: number): number[] => Array.from({ length: count }, (_, history) => history);

describe('useLadder', () => {
  it('climbs from no use to four times the plan, and has the plan itself and twice it', () => {
    expect([useLadder[0], useLadder.at(-1), useLadder[topRung]]).toEqual([0, 4, 4]);
    expect(useLadder).toEqual(expect.arrayContaining([1, 2]));
  });

  it('takes small steps below the plan, larger ones where there is more to spare', () => {
    const stepTo = (factor: number): number => (factor > 2 ? 0.25 : factor > 1 ? 0.1 : 0.05);
    useLadder.forEach((factor, rung) => {
      if (rung > 0) expect(factor - useLadder[rung - 1]!).toBeCloseTo(stepTo(factor), 9);
    });
  });
});

describe('rungAtLeast()', () => {
  it('is the lowest rung with at least the factor', () => {
    expect([0, 0.93, 1, 1.01, 2.1, 4].map((factor) => useLadder[rungAtLeast(factor)])).toEqual([
      0, 0.95, 1, 1.1, 2.25, 4,
    ]);
    useLadder.forEach((factor, rung) => expect(rungAtLeast(factor)).toBe(rung));
  });

  it('is above the top where no rung has it', () => expect(rungAtLeast(4.01)).toBe(topRung + 1));
});

/** Which rungs each history carries: any set, as the rules of the flow would have it at worst. */
const anyCarried = fc.array(fc.uniqueArray(fc.integer({ min: 0, max: topRung })), {
  minLength: 1,
  maxLength: 12,
});

describe('highestCarried()', () => {
  it('is the highest rung that enough histories carry, whatever the order and the floor', () => {
    fc.assert(
      fc.property(anyCarried, fc.nat(3), fc.nat(topRung), fc.boolean(), (sets, allowed, floor, turned) => {
        const carries = (history: number, rung: number): boolean => sets[history]!.includes(rung);
        const rungs = useLadder.map((_, rung) => rung);
        const enough = rungs.filter((rung) => sets.filter((set) => !set.includes(rung)).length <= allowed);
        const highest = Math.max(-1, ...enough);
        const order = turned ? inOrder(sets.length).toReversed() : inOrder(sets.length);
        const found = highestCarried(floor, topRung, carries, order, allowed);
        expect(found).toBe(highest > floor ? highest : null);
        expect(order.toSorted((one, other) => one - other)).toEqual(inOrder(sets.length));
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('stops at the first failure too many, and remembers who failed', () => {
    const order = inOrder(10);
    let asked = 0;
    const fails = (history: number): boolean => {
      asked += 1;
      return history < 7;
    };
    expect(highestCarried(3, 4, fails, order, 1)).toBeNull();
    expect(asked).toBe(9);
    expect(order.slice(0, 2)).toEqual([8, 7]);
    asked = 0;
    highestCarried(3, 4, fails, order, 1);
    expect(asked).toBe(2);
  });
});

describe('highestMonotone()', () => {
  it('is the same where a history carries all below what it carries', () => {
    const own = fc.array(fc.integer({ min: -1, max: topRung }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(own, fc.nat(3), fc.integer({ min: -1, max: topRung }), (highest, allowed, floor) => {
        const carries = (history: number, rung: number): boolean => rung <= highest[history]!;
        const count = highest.length;
        expect(highestMonotone(floor, carries, inOrder(count), allowed)).toBe(
          highestCarried(floor, topRung, carries, inOrder(count), allowed),
        );
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});
