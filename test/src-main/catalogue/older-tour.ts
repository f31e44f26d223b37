import { usualBicycle, type Leg, type Tour } from '../../../shared-types/tour.ts';
import type { WriteDb } from '../../../src-main/catalogue/connection.ts';

/** From version 20 up to 70: a tour with every part a leg can have. */
export function storeOldTour(db: WriteDb): void {
  db.exec(`
    INSERT INTO tours VALUES ('old-tour', 'Coast and moor', '2026-06-01', 71.5, 33, 98, 'Kept.');
    INSERT INTO legs VALUES
      ('old-tour', 0, 'Coast', 4, 'Oslo', NULL, NULL, NULL, 'rolling', 5.5, 2, 1),
      ('old-tour', 1, 'Moor', 3, NULL, 62.25, 9.5, 940, 'mountain', 6, 1, 1);
    INSERT INTO leg_nights VALUES
      ('old-tour', 0, 0, 'none'), ('old-tour', 0, 1, 'wall'), ('old-tour', 1, 0, 'electric-post');
    INSERT INTO day_stops VALUES ('old-tour', 0, 0, 'Lunch stop', 60, 1, 0.5);
    INSERT INTO leg_tracks VALUES ('old-tour', 1, 'Over the moor', 180.5, 2100, 1900, 910, 62.3, 9.6);
    INSERT INTO leg_grades VALUES 
      ('old-tour', 1, 0, -4, 0.3), ('old-tour', 1, 1, 0, 0.1), ('old-tour', 1, 2, 4.5, 0.6);
    INSERT INTO tour_left_at_home VALUES ('old-tour', 0, 'old-reader');
  `);
}

const coast: Leg = {
  label: 'Coast',
  days: 4,
  place: { as: 'station', station: 'Oslo' },
  radiation: { as: 'sunshine' },
  terrain: { as: 'class', terrainClass: 'rolling' },
  wind: { as: 'calm' },
  ridingHours: 5.5,
  nights: { by: 'pattern', kinds: ['none', 'wall'], wallOutlets: 2, postOutlets: 1 },
  dayStops: [{ label: 'Lunch stop', minutes: 60, outlets: 1, chance: 0.5 }],
};

const moor: Leg = {
  label: 'Moor',
  days: 3,
  place: { as: 'coordinates', latDeg: 62.25, lonDeg: 9.5, elevationM: 940 },
  radiation: { as: 'sunshine' },
  terrain: {
    as: 'track',
    terrainClass: 'mountain',
    pace: 'computed',
    track: {
      name: 'Over the moor',
      distanceKm: 180.5,
      ascentM: 2100,
      descentM: 1900,
      meanElevationM: 910,
      meanLatDeg: 62.3,
      meanLonDeg: 9.6,
      heightShare: 1,
      timedShare: 0,
      heightsM: [],
      pieces: [
        {
          distanceKm: 180.5,
          stretches: [
            { gradePct: -4, speedKmh: null, share: 0.3 },
            { gradePct: 0, speedKmh: null, share: 0.1 },
            { gradePct: 4.5, speedKmh: null, share: 0.6 },
          ],
        },
      ],
    },
  },
  wind: { as: 'calm' },
  ridingHours: 6,
  nights: { by: 'pattern', kinds: ['electric-post'], wallOutlets: 1, postOutlets: 1 },
  dayStops: [],
};

/** The tour of `storeOldTour()` as it must be read today: what it did not say is as usual. */
export const oldTour: Tour = {
  id: 'old-tour',
  label: 'Coast and moor',
  startDate: '2026-06-01',
  legs: [coast, moor],
  leftAtHome: ['old-reader'],
  riderMassKg: 71.5,
  bicycleMassKg: 33,
  riderW: 98,
  bicycle: usualBicycle,
  notes: 'Kept.',
};
