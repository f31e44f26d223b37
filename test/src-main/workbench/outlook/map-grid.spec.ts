import { describe, expect, it } from 'vitest';
import { differentGaps, usualMapPlan } from '../../../../src-main/workbench/outlook/map-grid.ts';

describe('the grid of the map', () => {
  it('reaches from 2 to 90 days, and from a wall every night to one in 14 days', () => {
    const { days, gapsDays } = usualMapPlan;
    expect([days[0], days.at(-1), gapsDays[0], gapsDays.at(-1)]).toEqual([2, 90, 1, 14]);
    for (const ascending of [days, gapsDays]) expect(ascending.toSorted((a, b) => a - b)).toEqual(ascending);
  });

  it.each([
    { days: 2, gaps: [1, 2] },
    { days: 3, gaps: [1, 2, 5] },
    { days: 5, gaps: [1, 2, 5] },
    { days: 6, gaps: [1, 2, 5, 7] },
    { days: 90, gaps: [1, 2, 5, 7] },
  ])('takes one gap without a wall on the way for $days days', ({ days, gaps }) =>
    expect(differentGaps({ gapsDays: [1, 2, 5, 7] }, days)).toEqual(gaps),
  );
});
