import { z } from 'zod';
import { choice, quantity, share } from './field.ts';
import { itemCommon } from './item-common.ts';
import { measurement } from './measurement.ts';
import { money } from './money.ts';
import { port } from './port.ts';

const powerPoint = z.strictObject({
  speedKmh: quantity({ label: 'Speed', unit: 'km/h', min: 0, max: 120 }),
  powerW: quantity({ label: 'Power', unit: 'W', min: 0, max: 100 }),
});

/** Where a rider took the readings of a hub's curve. */
export const curveReadAt = choice(
  { hub: 'The hub’s own terminals', plug: 'The USB plug, converter included' },
  { label: 'Measured at' },
);
export type CurveReadAt = z.infer<typeof curveReadAt>;

export const hubPower = z.discriminatedUnion(
  'as',
  [
    z.strictObject({
      as: z.literal('rating'),
      ratedW: quantity({ label: 'Rating', unit: 'W at 15 km/h', min: 0.5, max: 12, step: 0.1 }),
    }),
    z.strictObject({
      as: z.literal('curve'),
      readAt: curveReadAt,
      points: z
        .array(powerPoint, { error: 'at least two points, speed rising' })
        .min(2, { error: 'at least two points, speed rising' })
        .max(60, { error: 'at most 60 points' })
        .refine((points) => points.every((point, i) => i === 0 || point.speedKmh > points[i - 1]!.speedKmh), {
          error: 'points with rising speed',
        }),
    }),
  ],
  { error: 'a rating in W, or a measured curve of speed and power' },
);
export type HubPower = z.infer<typeof hubPower>;

/** A hub that gives less than a twentieth of its curve is broken, and one half as strong again is another hub (our choice). */
const yieldRange = { min: 0.05, max: 1.5 } as const;

const measuredYield = measurement(
  share(
    {
      label: 'Measured yield',
      hint: 'At the plug while riding, of what the rating or curve promises there. 100 % is as promised; measure anew when you change either.',
    },
    yieldRange.min,
    yieldRange.max,
  ),
);

/** New parts of a wheel: what all of them cost and weigh, and the mass of the old ones that come off. */
const wheelParts = (fresh: string, old: string, hint: string) =>
  z.strictObject({
    cost: money,
    massG: quantity({ label: fresh, unit: 'g', min: 0, max: 3000, hint }),
    replacesG: quantity({ label: old, unit: 'g', min: 0, max: 3000 }),
  });

export const generatorHub = z.strictObject({
  kind: z.literal('generator-hub'),
  ...itemCommon,
  replacesG: quantity({ label: 'Mass of the hub it replaces', unit: 'g', min: 0, max: 2000 }),
  rim: wheelParts('New rim', 'Old rim taken off', '0 when the old one stays.'),
  spokes: wheelParts('New spokes', 'Old spokes taken off', '0 when the old ones stay.'),
  labour: money,
  power: hubPower,
  measuredYield,
  idleDragW10: quantity({
    label: 'Drag switched off, 10 km/h',
    unit: 'W',
    min: 0,
    max: 20,
    step: 0.05,
    hint: 'Published lathe tests: 0.25 to 1 W.',
  }),
  idleDragW30: quantity({
    label: 'Drag switched off, 30 km/h',
    unit: 'W',
    min: 0,
    max: 40,
    step: 0.05,
    hint: 'Published lathe tests: 1.25 to 6 W.',
  }),
  wheelCircumferenceM: quantity({
    label: 'Circumference of your wheel',
    unit: 'm',
    min: 0.9,
    max: 2.5,
    step: 0.001,
    hint: 'Rim and tyre together: 349 mm about 1.33, 406 about 1.53, 559 about 2.05, 622 about 2.16.',
  }),
  ratedCircumferenceM: quantity({
    label: 'Circumference its rating is for',
    unit: 'm',
    min: 0.9,
    max: 2.5,
    step: 0.001,
    hint: 'The wheel the maker built it for; in a smaller one it turns faster and gives more.',
  }),
});

/** How a converter loads the hub. */
export const hubLoad = choice(
  { rated: 'As the lamp the hub is rated for', tracking: 'Follows the best load' },
  {
    label: 'Load on the hub',
    hint: 'A plain rectifier and regulator load it about like its lamp; a tracking one takes more at speed.',
  },
);
export type HubLoad = z.infer<typeof hubLoad>;

export const converter = z.strictObject({
  kind: z.literal('converter'),
  ...itemCommon,
  efficiency: share({ label: 'Efficiency', hint: 'Rectifier and regulator together; about 0.8.' }, 0.2),
  startSpeedKmh: quantity({ label: 'Starts at', unit: 'km/h', min: 0, max: 40 }),
  load: hubLoad,
  seriesCapacitorUF: quantity({
    label: 'Tuning capacitor in series',
    unit: 'µF',
    min: 0,
    max: 5000,
    hint: '0 for none. 220 µF lifts the output at middling speed and costs some at a crawl.',
  }),
  output: port,
});
