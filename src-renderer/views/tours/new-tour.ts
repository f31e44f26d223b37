import {
  longestTourDays,
  tourDays,
  usualBicycle,
  type Leg,
  type Tour,
  type TourDraft,
} from '../../../shared-types/tour.ts';
import { copyLabel } from '../../parts/text/copy-label.ts';
import { draftOf } from '../../state/draft-of.ts';

/** A tour to start from: a week of rolling roads in the temperate north, with a wall every third night (common practice, no source). */
export function startingTour(startDate: string): TourDraft {
  return {
    label: 'New tour',
    startDate,
    legs: [startingLeg],
    leftAtHome: [],
    riderMassKg: 75,
    bicycleMassKg: 30,
    riderW: 100,
    bicycle: usualBicycle,
    notes: '',
  };
}

const startingLeg: Leg = {
  label: 'First leg',
  days: 7,
  place: { as: 'coordinates', latDeg: 45, lonDeg: 10, elevationM: 200 },
  radiation: { as: 'sunshine' },
  terrain: { as: 'class', terrainClass: 'rolling' },
  wind: { as: 'calm' },
  ridingHours: 6,
  nights: { by: 'pattern', kinds: ['none', 'none', 'wall'], wallOutlets: 2, postOutlets: 1 },
  dayStops: [],
};

/** A further leg goes on as the last one did; its track, which is ridden once, stays behind. */
export function nextLeg(legs: readonly Leg[]): Leg {
  const last = legs.at(-1) ?? startingLeg;
  const { terrainClass } = last.terrain;
  const roomDays = Math.max(1, longestTourDays - tourDays({ legs: [...legs] }));
  return {
    ...last,
    label: `Leg ${legs.length + 1}`,
    days: Math.min(last.days, roomDays),
    terrain: { as: 'class', terrainClass },
  };
}

export function copyOf(tour: Tour): TourDraft {
  return { ...draftOf(tour), label: copyLabel(tour.label) };
}
