import { describe, expect, it } from 'vitest';
import {
  longestTourDays,
  tourDays,
  tourDraft,
  usualBicycle,
  type Leg,
} from '../../../../shared-types/tour.ts';
import { copyOf, nextLeg, startingTour } from '../../../../src-renderer/views/tours/new-tour.ts';
import { demoTours } from '../../../../db/demo/demo.ts';
import { trackFixture } from '../../../support/track-fixture.ts';

const start = startingTour('2027-06-01');

describe('startingTour()', () => {
  it('is a tour the contract takes as it is', () => {
    expect(tourDraft.safeParse(start).success).toBe(true);
    expect(start.startDate).toBe('2027-06-01');
  });

  it('starts with a usual bicycle in calm air', () => {
    expect([start.bicycle, start.legs[0]?.wind]).toEqual([usualBicycle, { as: 'calm' }]);
  });
});

describe('nextLeg()', () => {
  it('never draws a tour out beyond its longest', () => {
    const legs: Leg[] = [{ ...start.legs[0]!, days: longestTourDays - 2 }];
    const longer = [...legs, nextLeg(legs)];
    expect(tourDays({ legs: longer })).toBe(longestTourDays);
  });

  it('leaves the track of the last leg behind', () => {
    const track = trackFixture();
    const last: Leg = {
      ...start.legs[0]!,
      terrain: { as: 'track', terrainClass: 'mountain', pace: 'computed', track },
    };
    expect(nextLeg([last]).terrain).toEqual({ as: 'class', terrainClass: 'mountain' });
  });

  it('keeps the wind of the last leg', () => {
    const last: Leg = { ...start.legs[0]!, wind: { as: 'along', headwindKmh: 12 } };
    expect(nextLeg([last]).wind).toEqual({ as: 'along', headwindKmh: 12 });
  });

  it('goes on as the last leg did, under its own name', () => {
    const { legs } = demoTours[0]!;
    const next = nextLeg(legs);
    expect(next).toMatchObject({ label: 'Leg 4', place: legs[2]!.place, nights: legs[2]!.nights });
    expect(tourDraft.safeParse({ ...start, legs: [...legs, next] }).success).toBe(true);
  });
});

describe('copyOf()', () => {
  it('is a draft of the same tour under another label', () => {
    const copy = copyOf(demoTours[0]!);
    expect(copy).not.toHaveProperty('id');
    expect(copy.label).toBe(`${demoTours[0]!.label} (copy)`);
    expect(copy.legs).toEqual(demoTours[0]!.legs);
  });
});
