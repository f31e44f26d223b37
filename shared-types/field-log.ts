import { z } from 'zod';
import { count, id, isoDate, quantity } from './field.ts';
import type { Item } from './item.ts';
import type { StoreRole } from './stop-plan.ts';
import type { Reading } from './reading.ts';

/** What is estimated from readings. */
export const measure = z.enum(
  [
    'bank-delivery',
    'bank-efficiency',
    'device-riding',
    'device-stop',
    'device-evening',
    'device-night',
    'device-day',
    'panel-power',
    'hub-power',
    'hub-yield',
  ],
  { error: 'one of the values that readings measure' },
);
export type Measure = z.infer<typeof measure>;

/** The unit of each value; a share is shown in per cent. */
export const measureUnits = {
  'bank-delivery': 'Wh',
  'bank-efficiency': 'share',
  'device-riding': 'W',
  'device-stop': 'W',
  'device-evening': 'W',
  'device-night': 'W',
  'device-day': 'Wh a day',
  'panel-power': 'W',
  'hub-power': 'W',
  'hub-yield': 'share',
} as const satisfies Readonly<Record<Measure, string>>;
export type MeasureUnit = (typeof measureUnits)[Measure];

/** Share of such intervals that hold the true value. */
export const estimateLevel = 0.95;

const largestEstimate = 10_000;
const bound = (label: string) => quantity({ label, min: 0, max: largestEstimate });

/** A value that was taken over from readings, as the log keeps it. */
export const keptEstimate = z.strictObject({
  itemId: id,
  measure,
  value: bound('Value'),
  low: bound('Low end'),
  high: bound('High end'),
  readings: count({ label: 'Readings', min: 1, max: 100_000 }),
  on: isoDate({ label: 'Stored on' }),
});
export type KeptEstimate = z.infer<typeof keptEstimate>;

/** What one reading tells of the value: within which bounds it lay; null where it sets none. */
export interface ReadingCell {
  readonly readingId: string;
  readonly on: string;
  readonly low: number | null;
  readonly high: number | null;
}

/** Whether an estimate can be stored as a value of its item. */
export type EstimateOffer =
  | { readonly as: 'open'; readonly field: string; readonly now: string }
  | { readonly as: 'stored'; readonly field: string; readonly on: string; readonly readings: number }
  | { readonly as: 'none'; readonly why: string };

/** A value of an item, estimated from its readings. */
export interface ItemEstimate {
  readonly itemId: string;
  readonly measure: Measure;
  /** What is estimated, in words: `Delivery, full to empty`. */
  readonly name: string;
  readonly unit: MeasureUnit;
  /** By date, the oldest first. */
  readonly cells: readonly ReadingCell[];
  /** Readings that bound the value on both sides; the others help, but make no interval. */
  readonly readings: number;
  /** How many more such readings it takes; 0 when there is an estimate. */
  readonly missing: number;
  readonly estimate: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** What the catalogue says: label, rating or planned use. */
  readonly catalogue: { readonly value: number; readonly words: string } | null;
  /** What it rests on, in a sentence. */
  readonly basis: string;
  readonly offer: EstimateOffer;
}

/** All readings, the newest first, and what follows from them. */
export interface FieldLog {
  /** The rider's date, as the workbench has it. */
  readonly today: string;
  readonly readings: readonly Reading[];
  readonly estimates: readonly ItemEstimate[];
}

/** An item with a value from its readings, and the item as it was. */
export interface StoredEstimate {
  readonly item: Item;
  readonly before: Item;
  /** The value as it is now used, in words. */
  readonly words: string;
}

/** A day within a tour, counted from 1; more days than the longest tour has are refused. */
const mostTourDays = 366;

/** Where a rider is, to be told how long what is stored lasts. */
export const onTourQuestion = z.strictObject({
  tourId: id,
  scenarioId: id,
  /** null: as the date says. */
  day: z.nullable(count({ label: 'Day of the tour', min: 1, max: mostTourDays })),
});
export type OnTourQuestion = z.infer<typeof onTourQuestion>;

/** What a device or bank holds now, inside its cells, Wh. */
export interface StoreNow {
  readonly itemId: string;
  readonly copy: number;
  readonly label: string;
  readonly role: StoreRole;
  readonly capacityWh: number;
  readonly lowWh: number;
  readonly usualWh: number;
  readonly highWh: number;
  /** False when today has no reading of it, so that anything from empty to full is possible. */
  readonly isRead: boolean;
}

/** How long must-haves last, days from now; with `toTheEnd` at least to the end of the tour. */
export interface Lasting {
  readonly days: number;
  readonly toTheEnd: boolean;
}

/** A device that is switched off, and the days that this buys in the usual case. */
export interface SwitchOff {
  readonly label: string;
  readonly role: StoreRole;
  readonly days: number;
  /** The must-haves then last to the end of the tour, so that it may buy more. */
  readonly toTheEnd: boolean;
}

/** How long what is stored lasts without a wall. */
export interface OnTour {
  readonly day: number;
  readonly tourDays: number;
  readonly low: Lasting;
  readonly usual: Lasting;
  readonly good: Lasting;
  /** Which must-have most often runs flat first; null when none does. */
  readonly flatFirst: string | null;
  /** When the next night with a wall begins, days from now, and on which day; null when the tour has none any more. */
  readonly wall: { readonly inDays: number; readonly day: number } | null;
  /** What to switch off first; nice-to-haves before must-haves. */
  readonly switchOff: readonly SwitchOff[];
  readonly stores: readonly StoreNow[];
  readonly assumed: readonly string[];
}
