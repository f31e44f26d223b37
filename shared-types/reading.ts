import { z } from 'zod';
import { choice, id, isoDate, note, quantity, share } from './field.ts';
import { storeState } from './stop-plan.ts';

/** What a meter counted at the plug: watt-hours, or milliampere-hours at the voltage it showed. */
const meterEnergy = z.discriminatedUnion(
  'as',
  [
    z.strictObject({
      as: z.literal('meter-wh'),
      wh: quantity({ label: 'Counted', unit: 'Wh', min: 0.01, max: 2000 }),
    }),
    z.strictObject({
      as: z.literal('meter-mah'),
      mAh: quantity({ label: 'Counted', unit: 'mAh', min: 1, max: 400_000 }),
      volts: quantity({
        label: 'Voltage at the meter',
        unit: 'V',
        min: 1,
        max: 60,
        step: 0.1,
        hint: 'The mean while it counted: about 5 V on a plain plug, up to 20 V where a higher one was agreed.',
      }),
    }),
  ],
  { error: 'Wh, or mAh with the voltage at the meter' },
);
export type MeterEnergy = z.infer<typeof meterEnergy>;

const mAhPerAh = 1000;

export function meterWh(energy: MeterEnergy): number {
  return energy.as === 'meter-wh' ? energy.wh : (energy.mAh / mAhPerAh) * energy.volts;
}

/** What a device was doing while its use was read. */
export const during = choice(
  { riding: 'Riding', stop: 'At stops', evening: 'Evening', night: 'Night', day: 'A whole day' },
  { label: 'While' },
);
export type During = z.infer<typeof during>;

const common = {
  itemId: id,
  on: isoDate({ label: 'Date' }),
  note: note({ label: 'Note' }, 500),
};

/** Longest a rider keeps one reading running, h. */
const mostHours = 240;
const hours = (label: string, hint: string) =>
  quantity({ label, unit: 'h', min: 0.05, max: mostHours, step: 0.05, hint });

const charge = z.strictObject({
  as: z.literal('charge'),
  ...common,
  state: storeState,
});

const delivery = z.strictObject({
  as: z.literal('delivery'),
  ...common,
  energy: meterEnergy,
  before: storeState,
  after: storeState,
});

const intake = z.strictObject({
  as: z.literal('intake'),
  ...common,
  energy: meterEnergy,
  before: storeState,
  after: storeState,
});

const use = z.strictObject({
  as: z.literal('use'),
  ...common,
  beforeShare: share({ label: 'Before' }),
  afterShare: share({ label: 'After' }),
  hours: hours('For', 'How long it was used between the two, not charging.'),
  during,
});

const sunYield = z.strictObject({
  as: z.literal('sun'),
  ...common,
  energy: meterEnergy,
  hours: hours('Hours of full sun', 'Clear sky, the panel turned to the sun.'),
});

const rideYield = z.strictObject({
  as: z.literal('ride'),
  ...common,
  energy: meterEnergy,
  hours: hours('Hours ridden', 'Rolling time, without stops.'),
  distanceKm: z.nullable(
    quantity({
      label: 'Distance ridden',
      unit: 'km',
      min: 0.1,
      max: 5000,
      step: 0.1,
      hint: 'In those hours. Left empty, the mean speed is not known and the reading says nothing of the yield.',
    }),
  ),
});

/** The schema of each kind of reading; `as` tells them apart. */
export const readingKinds = { charge, delivery, intake, use, sun: sunYield, ride: rideYield } as const;
export type ReadingKind = keyof typeof readingKinds;

/** A reading as the rider notes it; the catalogue adds its id. */
export const readingDraft = z.discriminatedUnion('as', [charge, delivery, intake, use, sunYield, rideYield], {
  error: `a kind of reading, one of: ${Object.keys(readingKinds).join(', ')}`,
});
export type ReadingDraft = z.infer<typeof readingDraft>;
export type ReadingOf<K extends ReadingKind> = Extract<Reading, { as: K }>;
export type Reading = ReadingDraft & { readonly id: string };

/** Mean speed while rolling, km/h; null where the distance was not noted. */
export function meanKmh({
  distanceKm,
  hours: ridden,
}: Pick<ReadingOf<'ride'>, 'distanceKm' | 'hours'>): number | null {
  return distanceKm === null ? null : distanceKm / ridden;
}

/** Which readings an item of each kind can have, the commonest first; other kinds have none. */
export const readingsOfKind = {
  bank: ['charge', 'delivery', 'intake'],
  device: ['charge', 'use'],
  panel: ['sun'],
  'generator-hub': ['ride'],
} as const satisfies Readonly<Record<string, readonly ReadingKind[]>>;
export type ReadItemKind = keyof typeof readingsOfKind;

export function isRead(kind: string): kind is ReadItemKind {
  return Object.hasOwn(readingsOfKind, kind);
}
