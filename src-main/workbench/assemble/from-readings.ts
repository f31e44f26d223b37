import type { Assumption } from '../../../shared-types/comparison.ts';
import type { KeptEstimate, Measure } from '../../../shared-types/field-log.ts';
import type { Item } from '../../../shared-types/item.ts';
import { keptInUse } from '../field-log/kept-in-use.ts';
import { keptWords, measuredOn } from '../field-log/kept-words.ts';
import { measuredField } from '../field-log/measured-field.ts';

/** Where a measured value is from: its date and, as long as it is the one stored from readings, how many they were. */
export function measuredSource(
  item: Item,
  measure: Measure,
  on: string,
  kept: readonly KeptEstimate[],
): string {
  const known = keptInUse(item, measure, kept);
  return known === null ? measuredOn(on) : `${measuredOn(on)}, ${keptWords(known)}`;
}

/** A figure without a date of its own, which counts as measured only while it is the one stored from readings. */
export function figureFromReadings(
  item: Item,
  measure: Measure,
  kept: readonly KeptEstimate[],
): readonly Assumption[] {
  const known = keptInUse(item, measure, kept);
  const field = measuredField(item, measure);
  if (known === null || 'why' in field) return [];
  return [
    {
      name: item.label,
      value: `${field.name.toLowerCase()}: ${field.now}`,
      basis: 'measured',
      source: `${measuredOn(known.on)}, ${keptWords(known)}`,
    },
  ];
}

const usesRead: readonly Measure[] = [
  'device-riding',
  'device-stop',
  'device-evening',
  'device-night',
  'device-day',
];

/** What devices use by the rider's own readings. */
export function usesFromReadings(
  devices: readonly Item[],
  kept: readonly KeptEstimate[],
): readonly Assumption[] {
  return devices.flatMap((item) => usesRead.flatMap((measure) => figureFromReadings(item, measure, kept)));
}
