import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../db/demo/demo.ts';
import { nightOf, type NightKind, type Tour } from '../../../shared-types/tour.ts';
import { withOneMoreWall } from '../../../src-main/workbench/one-more-wall.ts';

const [demo] = demoTours as [Tour];
const nightsOf = ({ legs }: Tour): NightKind[] =>
  legs.flatMap(({ days, nights }) => Array.from({ length: days }, (_, night) => nightOf(nights, night)));

/** A tour of one leg with these nights: w for a wall, . for none. */
function tourOf(nights: string): Tour {
  const kinds = Array.from(nights, (night): NightKind => (night === 'w' ? 'wall' : 'none'));
  const leg = demo.legs[0]!;
  return {
    ...demo,
    legs: [{ ...leg, days: kinds.length, nights: { ...leg.nights, by: 'list', kinds } }],
  };
}

describe('withOneMoreWall()', () => {
  it.each([
    { nights: '.......', afterDay: 3 },
    { nights: '..w......w.', afterDay: 6 },
    { nights: 'w.w.', afterDay: 2 },
  ])('parts the longest stretch of $nights after day $afterDay', ({ nights, afterDay }) => {
    expect(withOneMoreWall(tourOf(nights))?.afterDay).toBe(afterDay);
  });

  it.each(['www.', 'w', '.'])('has none to add to %s: the last night charges nothing', (nights) => {
    expect(withOneMoreWall(tourOf(nights))).toBeNull();
  });

  it('changes one night of the demo and nothing else', () => {
    const more = withOneMoreWall(demo)!;
    const [before, after] = [nightsOf(demo), nightsOf(more.tour)];
    const changed = after.flatMap((night, at) => (night === before[at] ? [] : [`${night} ${at + 1}`]));
    expect(changed).toEqual([`wall ${more.afterDay}`]);
    expect(before[more.afterDay - 1]).toBe('none');
  });
});
