import { z } from 'zod';
import { choice, count, id, isoDate, label, note, quantity, share } from './field.ts';
import { elevationM, latDeg, lonDeg } from './spot.ts';
import { trackProfile } from './track.ts';

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
  {
    label: 'Terrain',
    hint: 'Climb per km: flat 1.5 m, rolling 7, hilly 15, mountain 23; rough track 11, on gravel.',
  },
);
export type TerrainClass = z.infer<typeof terrainClass>;

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

/** Wind on a leg: none, along the road, or from all sides alike as on a round or a winding road. */
export const wind = z.discriminatedUnion(
  'as',
  [
    z.strictObject({ as: z.literal('calm') }),
    z.strictObject({
      as: z.literal('along'),
      headwindKmh: quantity({
        label: 'Headwind',
        unit: 'km/h',
        min: -60,
        max: 60,
        hint: 'At the height of the rider; below 0 it pushes.',
      }),
    }),
    z.strictObject({
      as: z.literal('around'),
      windKmh: quantity({
        label: 'Wind',
        unit: 'km/h',
        min: 0,
        max: 60,
        hint: 'At the height of the rider; what blows across the road is not counted.',
      }),
    }),
  ],
  { error: 'calm, along the road with a speed, or from all sides with a speed' },
);
export type Wind = z.infer<typeof wind>;

export const trackPace = choice(
  { recorded: 'As recorded', computed: 'At your power' },
  {
    label: 'Speed on the track',
    hint: 'As recorded: the moving speeds of the file, taken as ridden without the kit compared here.',
  },
);
export type TrackPace = z.infer<typeof trackPace>;

export const terrain = z.discriminatedUnion(
  'as',
  [
    z.strictObject({ as: z.literal('class'), terrainClass }),
    z.strictObject({ as: z.literal('track'), terrainClass, pace: trackPace, track: trackProfile }),
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

/** As many nights as the longest tour has. */
export const mostNights = longestTourDays;
const nightsAllowed = { error: `1 to ${mostNights} nights` };

export const nights = z.strictObject({
  by: choice(
    { pattern: 'A pattern that repeats', list: 'A list, night by night' },
    { label: 'Nights by', hint: 'Nights after the end of a list have no wall.' },
  ),
  /** In order: repeated to the end of the leg, or each night as it comes. */
  kinds: z.array(nightKind, nightsAllowed).min(1, nightsAllowed).max(mostNights, nightsAllowed),
  wallOutlets: count({ label: 'Outlets in a room', min: 1, max: 6 }),
  postOutlets: count({ label: 'Outlets at a post', min: 1, max: 4 }),
});

export type Nights = z.infer<typeof nights>;

/** The kind of a night of a leg; night 0 follows its first day. */
export function nightOf({ by, kinds }: Pick<Nights, 'by' | 'kinds'>, night: number): NightKind {
  return kinds[by === 'pattern' ? night % kinds.length : night] ?? 'none';
}

/** Riding and stops must fit between the start of the day's ride and bedtime (8 to 22 h), hours. */
export const longestDayOutH = 14;

const leg = z
  .strictObject({
    label: label({ label: 'Leg' }),
    days: count({ label: 'Days', min: 1, max: longestTourDays }),
    place,
    radiation,
    terrain,
    wind,
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

/** How the loaded bicycle rolls and meets the air. */
export const bicycle = z.strictObject({
  dragAreaM2: quantity({
    label: 'Drag area',
    unit: 'm²',
    min: 0.2,
    max: 1.2,
    step: 0.001,
    hint: '557 cyclists on the road had 0.56 in the mean; as a rule 0.45 to 0.75 with bags.',
  }),
  pavedRolling: quantity({
    label: 'Rolling resistance on pavement',
    min: 0.002,
    max: 0.03,
    step: 0.0001,
    hint: '557 cyclists had 0.0077 in the mean; as a rule 0.005 for supple tyres. Gravel adds to it.',
  }),
  drivetrainEfficiency: quantity({
    label: 'Drivetrain efficiency',
    min: 0.8,
    max: 0.999,
    step: 0.001,
    hint: 'Wheel per W at the pedals; 0.976 for a clean chain.',
  }),
  downhillCapKmh: quantity({
    label: 'Fastest downhill',
    unit: 'km/h',
    min: 15,
    max: 90,
    hint: 'Where you brake.',
  }),
});
export type Bicycle = z.infer<typeof bicycle>;

/**
 * A loaded touring bicycle. Drag area and rolling resistance: means of 557 coast-down tests (thesis 13011, University of Bologna); chain: Martin
 * et al. 1998; fastest downhill: common practice, no source.
 */
export const usualBicycle: Bicycle = {
  dragAreaM2: 0.559,
  pavedRolling: 0.0077,
  drivetrainEfficiency: 0.976,
  downhillCapKmh: 45,
};

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
    bicycle,
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

/** The days of a tour before one of its legs, which counts from 0. */
export function daysBefore({ legs }: Pick<TourDraft, 'legs'>, legIndex: number): number {
  return tourDays({ legs: legs.slice(0, legIndex) });
}
