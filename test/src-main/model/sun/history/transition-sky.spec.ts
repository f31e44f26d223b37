import { describe, expect, it } from 'vitest';
import { transitionLibrary } from '../../../../../src-main/model/sun/history/transition-library.ts';
import { chainOf } from '../../../../../src-main/model/sun/history/transition-sky.ts';
import { expectNear } from '../../../../support/near.ts';

describe('the library of transitions', () => {
  it('covers every mean clearness from 0 to 1, classes in order', () => {
    const tops = transitionLibrary.map(({ upTo }) => upTo);
    expect(tops.toSorted((a, b) => a - b)).toEqual(tops);
    for (const mean of [0, 0.3, 0.301, 0.5, 0.7, 0.71, 1]) expect(chainOf(mean)).toBeDefined();
  });

  it('has ten rows of ten in each class, each adding up to one', () => {
    for (const { thousandths } of transitionLibrary) {
      expect(thousandths.map((row) => row.length)).toEqual(new Array<number>(10).fill(10));
      // Aguiar et al. 1988 print thousandths; ten roundings can add up to a few of them.
      for (const row of thousandths)
        expectNear(
          row.reduce((a, b) => a + b),
          1000,
          3,
          'row sum, thousandths',
        );
    }
  });
});

describe('chainOf()', () => {
  it('takes the class whose upper end the mean does not pass', () => {
    expect(chainOf(0.35)).toBe(chainOf(0.31));
    expect(chainOf(0.3501)).not.toBe(chainOf(0.35));
  });

  it('knows the long run: a further day changes no share', () => {
    for (const { upTo } of transitionLibrary) {
      const { stationary, cumulative } = chainOf(Math.min(upTo, 1));
      const step = (from: number, to: number): number =>
        cumulative[from * 10 + to]! - (to === 0 ? 0 : cumulative[from * 10 + to - 1]!);
      stationary.forEach((share, to) => {
        const next = stationary.reduce((sum, each, from) => sum + each * step(from, to), 0);
        expectNear(next, share, 1e-9, 'share of days');
      });
      expectNear(
        stationary.reduce((a, b) => a + b),
        1,
        1e-9,
        'all shares',
      );
    }
  });
});
