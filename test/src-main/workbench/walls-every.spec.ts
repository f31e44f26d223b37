import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../db/demo/demo.ts';
import { nightOf } from '../../../shared-types/tour.ts';
import { withWallEvery } from '../../../src-main/workbench/walls-every.ts';

const [tour] = demoTours as [(typeof demoTours)[number]];

describe('withWallEvery()', () => {
  it('counts on over the legs, and leaves all else as it was', () => {
    const changed = withWallEvery(tour, 5);
    const nights = changed.legs.flatMap(({ days, nights: ofLeg }) =>
      Array.from({ length: days }, (_, night) => nightOf(ofLeg, night)),
    );
    expect(nights.flatMap((kind, night) => (kind === 'none' ? [] : [`${kind} ${night + 1}`]))).toEqual([
      'wall 5',
      'wall 10',
      'wall 15',
      'wall 20',
    ]);
    const withoutNights = (of: typeof tour) => of.legs.map(({ nights: _, ...leg }) => leg);
    expect(withoutNights(changed)).toEqual(withoutNights(tour));
    expect(changed.legs.map(({ nights: { wallOutlets } }) => wallOutlets)).toEqual([2, 2, 2]);
  });
});
