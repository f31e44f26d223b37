import { z } from 'zod';
import { choice, count, id, isoDate, label, note, quantity, share } from './field.ts';

/** The longest tour the workbench takes, days. */
export const longestTourDays = 366;

export const nightKind = choice(
  { wall: 'Room with a wall', 'electric-post': 'Campsite post', none: 'No wall' },
  { label: 'Night' },
);
export type NightKind = z.infer<typeof nightKind>;

export const terrainClass = choice(
  {
    'flat-paved': 'Flat, paved',
    rolling: 'Rolling',
    hilly: 'Hilly',
    mountain: 'Mountain',
    'rough-track': 'Rough track',
  },
  { label: 'Terrain' },
);
export type TerrainClass = z.infer<typeof terrainClass>;

const latDeg = quantity({ label: 'Latitude', unit: '° north', min: -90, max: 90, step: 0.001 });
const lonDeg = quantity({ label: 'Longitude', unit: '° east', min: -180, max: 180, step: 0.001 });
const elevationM = quantity({ label: 'Height', unit: 'm', min: -450, max: 6000 });

/** Where a leg lies: a climate station by name, or coordinates for which the nearest station is taken. */
export const place = z.discriminatedUnion(
  'as',
  [
    z.strictObject({ as: z.literal('station'), station: label({ label: 'Climate station' }) }),
    z.strictObject({ as: z.literal('coordinates'), latDeg, lonDeg, elevationM }),
  ],
  { error: 'a climate station, or a latitude and longitude' },
);
export type Place = z.infer<typeof place>;

const monthsAYear = 12;
const twelveMonths = { error: 'twelve monthly figures, January first' };

/** Where the light of a leg comes from: the sunshine hours of its station, or the rider's own monthly means. */
export const radiation = z.discriminatedUnion(
  'as',
  [
    z.strictObject({ as: z.literal('sunshine') }),
    z.strictObject({
      as: z.literal('own'),
      /** Mean daily global radiation on a horizontal plane, by month. The most there is: 13 at the pole in its summer. */
      kWhM2ADay: z
        .array(
          quantity({ label: 'Radiation', unit: 'kWh/m² a day', min: 0, max: 13.5, step: 0.01 }),
          twelveMonths,
        )
        .length(monthsAYear, twelveMonths),
    }),
  ],
  { error: 'the sunshine of the station, or monthly figures of your own' },
);
export type Radiation = z.infer<typeof radiation>;

/** A share of the distance ridden at one grade (rise over run, uphill positive). */
const gradeShare = z.strictObject({
  gradePct: quantity({ label: 'Grade', unit: '%', min: -40, max: 40 }),
  share: share({ label: 'Share of distance' }),
});
export type GradeShare = z.infer<typeof gradeShare>;

/** What is kept of a GPX track: its grades, not its points. */
export const trackProfile = z.strictObject({
  name: label({ label: 'Track' }, 200),
  distanceKm: quantity({ label: 'Distance', unit: 'km', min: 0.1, max: 40_000 }),
  ascentM: quantity({ label: 'Climb', unit: 'm', min: 0, max: 1_000_000 }),
  descentM: quantity({ label: 'Descent', unit: 'm', min: 0, max: 1_000_000 }),
  meanElevationM: elevationM,
  meanLatDeg: latDeg,
  meanLonDeg: lonDeg,
  grades: z.array(gradeShare).min(1).max(60),
});
export type TrackProfile = z.infer<typeof trackProfile>;

export const terrain = z.discriminatedUnion(
  'as',
  [
    z.strictObject({ as: z.literal('class'), terrainClass }),
    z.strictObject({ as: z.literal('track'), terrainClass, track: trackProfile }),
  ],
  { error: 'a terrain class, or a track' },
);

export const dayStop = z.strictObject({
  label: label({ label: 'Stop' }),
  minutes: count({ label: 'Length', unit: 'min', min: 5, max: 600, step: 5 }),
  outlets: count({ label: 'Outlets', min: 0, max: 6, hint: '0 for a rest with no wall.' }),
  chance: share({ label: 'Chance of an outlet', hint: 'How often it is really there and free.' }),
});
export type DayStop = z.infer<typeof dayStop>;

/** The longest pattern of nights before it repeats. */
export const longestNightPattern = 60;
const patternAllowed = { error: `a pattern of 1 to ${longestNightPattern} nights` };

export const nights = z.strictObject({
  pattern: z.array(nightKind, patternAllowed).min(1, patternAllowed).max(longestNightPattern, patternAllowed),
  wallOutlets: count({ label: 'Outlets in a room', min: 1, max: 6 }),
  postOutlets: count({ label: 'Outlets at a post', min: 1, max: 4 }),
});

/** Riding and stops must fit between the start of the day's ride and bedtime (8 to 22 h), hours. */
export const longestDayOutH = 14;

const leg = z
  .strictObject({
    label: label({ label: 'Leg' }),
    days: count({ label: 'Days', min: 1, max: longestTourDays }),
    place,
    radiation,
    terrain,
    ridingHours: quantity({ label: 'Riding a day', unit: 'h', min: 0, max: 12, step: 0.25 }),
    nights,
    dayStops: z.array(dayStop).max(6, { error: 'at most 6 stops a day' }),
  })
  .refine(
    ({ ridingHours, dayStops }) =>
      ridingHours + dayStops.reduce((sum, stop) => sum + stop.minutes / 60, 0) <= longestDayOutH,
    {
      path: ['dayStops'],
      error: `riding and stops that fit into ${longestDayOutH} h (from 8 to 22 h)`,
    },
  );
export type Leg = z.infer<typeof leg>;

export const tourDraft = z
  .strictObject({
    label: label({ label: 'Tour' }),
    startDate: isoDate({ label: 'Starts on' }),
    legs: z.array(leg).min(1, { error: 'at least one leg' }).max(60, { error: 'at most 60 legs' }),
    /** Owned devices come along unless they are named here. */
    leftAtHome: z.array(id).max(500),
    riderMassKg: quantity({ label: 'Rider', unit: 'kg', min: 30, max: 200 }),
    bicycleMassKg: quantity({
      label: 'Bicycle and luggage',
      unit: 'kg',
      min: 5,
      max: 150,
      hint: 'Without the kit compared here.',
    }),
    riderW: quantity({
      label: 'Sustained power',
      unit: 'W',
      min: 30,
      max: 400,
      hint: 'All day at the pedals: 60 to 150 W, about 100 W for most.',
    }),
    notes: note({ label: 'Notes' }),
  })
  .refine((tour) => tour.legs.reduce((sum, each) => sum + each.days, 0) <= longestTourDays, {
    path: ['legs'],
    error: `legs of together 1 to ${longestTourDays} days`,
  });
export type TourDraft = z.infer<typeof tourDraft>;
export type Tour = TourDraft & { readonly id: string };

/** The days of a tour, all legs together. */
export function tourDays(tour: Pick<TourDraft, 'legs'>): number {
  return tour.legs.reduce((sum, each) => sum + each.days, 0);
}
