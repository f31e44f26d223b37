import { describe, expect, it } from 'vitest';
import type { ScoredRow } from '../../../../shared-types/comparison.ts';
import { becauseOf, holdsFirst, leaderOf, leadPoints } from '../../../../src-main/model/judge/first-place.ts';
import { scoredRow } from '../../../support/score-fixture.ts';

type Change = Partial<ScoredRow>;

/** Two rows, best first. */
function rows(
  a: Change & { readonly score: number },
  b: Change & { readonly score: number },
  best: 'a' | 'b' = 'a',
): readonly ScoredRow[] {
  const both = [scoredRow('a', a.score, a), scoredRow('b', b.score, b)];
  return (best === 'a' ? both : both.toReversed()).map((row, place) => ({ ...row, rank: place + 1 }));
}

const costly: Change = { excludedBy: [{ limit: 'toBuy', text: 'costs 420 EUR, your limit is 400 EUR' }] };
const why = (before: readonly ScoredRow[], after: readonly ScoredRow[]): string | null =>
  becauseOf(before, after, 'a', (id) => `Kit ${id.toUpperCase()}`);

describe('the first place', () => {
  it('is led by the points between two scores, of 100', () => {
    expect(leadPoints(rows({ score: 0.75 }, { score: 0.5 }), 'a', 'b')).toBe(25);
    expect(leadPoints(rows({ score: 0.25 }, { score: 0.5 }), 'a', 'b')).toBe(-25);
  });

  it('is held by whom none ranks before, and by nobody that a limit leaves out', () => {
    expect(holdsFirst(rows({ score: 0.7 }, { score: 0.5 }), 'a')).toBe(true);
    expect(holdsFirst(rows({ score: 0.7 }, { score: 0.8 }, 'b'), 'a')).toBe(false);
    const out = rows({ score: 0.7, ...costly }, { score: 0.5, ...costly });
    expect([holdsFirst(out, 'a'), leaderOf(out)]).toEqual([false, null]);
  });

  it('refuses a scenario that was not scored', () => {
    expect(() => leadPoints([], 'a', 'b')).toThrow('There is no scored row a.');
  });
});

describe('becauseOf()', () => {
  const before = rows({ score: 0.6 }, { score: 0.5 });

  it('has nothing to say where the score turns the order', () => {
    expect(why(before, rows({ score: 0.5 }, { score: 0.6 }, 'b'))).toBeNull();
  });

  it('tells of a limit that the first now passes, even where the other overtakes it too', () => {
    expect(why(before, rows({ score: 0.55, ...costly }, { score: 0.5 }, 'b'))).toBe(
      'Kit A costs 420 EUR, your limit is 400 EUR',
    );
    expect(why(before, rows({ score: 0.4, ...costly }, { score: 0.5 }, 'b'))).toContain('your limit');
    expect(why(before, rows({ score: 0.6, ...costly }, { score: 0.5, ...costly }))).toContain('Kit A costs');
  });

  it('tells of a figure that is unacceptable now', () => {
    const after = rows({ score: 0.6, unacceptable: ['margin'] }, { score: 0.5 }, 'b');
    expect(why(before, after)).toBe('Kit A has an unacceptable "Energy margin"');
  });

  it('tells of a mark that held the other back before', () => {
    const held = rows({ score: 0.6 }, { score: 0.8, unacceptable: ['margin'] });
    const after = rows({ score: 0.6 }, { score: 0.8 }, 'b');
    expect(why(held, after)).toBe('Kit B no longer has an unacceptable "Energy margin"');
    expect(why(rows({ score: 0.6 }, { score: 0.8, ...costly }), after)).toBe(
      'Kit B comes within your limits',
    );
    expect(why(rows({ score: 0.6 }, { score: 0.8, notKnown: ['risk'] }), after)).toContain('a known figure');
  });
});
