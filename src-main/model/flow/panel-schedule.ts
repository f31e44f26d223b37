import type { Plane } from '../sun/plane.ts';
import { partAt, sampleMinutes } from './day-schedule.ts';

/** Where a panel lies through the day; null is packed away. */
export interface PanelPlacement {
  readonly whileRiding: Plane | null;
  readonly atStops: Plane | null;
  readonly inCamp: Plane | null;
  /** Share of the light left while riding, 0..1. */
  readonly rackFactor: number;
  /** Names of the day stops at which it is laid out; none means all. */
  readonly onlyAtStops: readonly string[];
  /** Clock hours between which it is laid out in camp. */
  readonly campFromH: number;
  readonly campToH: number;
}

/** The day of a leg as far as a panel cares. */
export interface PanelDay {
  readonly ridingHours: number;
  readonly stops: readonly { readonly label: string; readonly hours: number }[];
}

/** Share of each step of a day that a panel spends riding, at a stop where it is laid out, and laid out in camp. */
export interface PanelSchedule {
  readonly riding: Float64Array;
  readonly atStops: Float64Array;
  readonly inCamp: Float64Array;
}

const minutesPerDay = 1440;

/** When a panel lies where on a day of a leg; what is in no array it is packed away. */
export function panelSchedule(
  day: PanelDay,
  placement: Pick<PanelPlacement, 'onlyAtStops' | 'campFromH' | 'campToH'>,
  stepsPerDay: number,
): PanelSchedule {
  const empty = (): Float64Array => new Float64Array(stepsPerDay);
  const schedule: PanelSchedule = { riding: empty(), atStops: empty(), inCamp: empty() };
  const samplesPerStep = Math.max(1, Math.round(minutesPerDay / stepsPerDay / sampleMinutes));
  for (let sample = 0; sample < stepsPerDay * samplesPerStep; sample += 1) {
    const hour = ((sample + 0.5) / (stepsPerDay * samplesPerStep)) * 24;
    const place = placeAt(hour, day, placement);
    if (place !== null) schedule[place][Math.floor(sample / samplesPerStep)]! += 1 / samplesPerStep;
  }
  return schedule;
}

function placeAt(
  hour: number,
  { ridingHours, stops }: PanelDay,
  { onlyAtStops, campFromH, campToH }: Pick<PanelPlacement, 'onlyAtStops' | 'campFromH' | 'campToH'>,
): keyof PanelSchedule | null {
  const part = partAt(hour, ridingHours, stops);
  if (part.inCamp) return hour >= campFromH && hour < campToH ? 'inCamp' : null;
  if (part.stop < 0) return 'riding';
  const named = onlyAtStops.length === 0 || onlyAtStops.includes(stops[part.stop]!.label);
  return named ? 'atStops' : null;
}
