import {
  estimateLevel,
  measureUnits,
  type EstimateOffer,
  type ItemEstimate,
  type KeptEstimate,
  type ReadingCell,
} from '../../../shared-types/field-log.ts';
import { labelWh, type Item, type ItemOf } from '../../../shared-types/item.ts';
import type { Reading } from '../../../shared-types/reading.ts';
import { estimateOf, tellingReadings } from '../../model/field-log/estimate.ts';
import type { Estimate } from '../../model/field-log/likelihood-interval.ts';
import { fewestReadings } from '../../model/field-log/mean-of-cells.ts';
import { ratioOf } from '../../model/field-log/ratio.ts';
import { monotoneCurve } from '../../model/ride/monotone-curve.ts';
import { bankCapacityWh } from '../../model/storage/bank.ts';
import { promiseWord, type PlugConverter } from './hub-yield.ts';
import { keptInUse } from './kept-in-use.ts';
import { keptWords } from './kept-words.ts';
import { inDigitsKept, isTaken, measuredField } from './measured-field.ts';
import { intakeCells, measuredOf, type Measured, type ReadCell } from './measures.ts';

type Found = Omit<ItemEstimate, 'offer' | 'catalogue' | 'itemId' | 'unit'>;

/** What readings are understood with. */
export interface LogSources {
  readonly readings: readonly Reading[];
  readonly kept: readonly KeptEstimate[];
  readonly converter: PlugConverter;
}

/** What the readings of these items make known; items without any are left out. */
export function itemEstimates(items: readonly Item[], log: LogSources): readonly ItemEstimate[] {
  return items.flatMap((item) =>
    foundOf(item, log).map((found) => ({
      ...found,
      itemId: item.id,
      unit: measureUnits[found.measure],
      catalogue: catalogueValue(item, found),
      offer: offerOf(item, found, log.kept),
    })),
  );
}

function foundOf(item: Item, { readings, converter }: LogSources): readonly Found[] {
  const found = measuredOf(item, readings, converter)
    .filter(({ cells }) => cells.length > 0)
    .map(straight);
  return item.kind === 'bank' ? [...found, ...efficiencyOf(item, readings, found[0])] : found;
}

function straight({ cells, ...words }: Measured): Found {
  return {
    ...words,
    cells: cells.map(shownCell),
    ...countOf(cells),
    estimate: estimateOf(
      cells.map(({ cell }) => cell),
      estimateLevel,
    ),
  };
}

function countOf(cells: readonly ReadCell[]): { readonly readings: number; readonly missing: number } {
  const readings = tellingReadings(cells.map(({ cell }) => cell));
  return { readings, missing: Math.max(0, fewestReadings - readings) };
}

/** What is open above is no number in JSON. */
function shownCell({ reading, cell: { low, high } }: ReadCell): ReadingCell {
  return {
    readingId: reading.id,
    on: reading.on,
    low: low > 0 ? low : null,
    high: Number.isFinite(high) ? high : null,
  };
}

/** What a bank gives per Wh it took in, from its deliveries and its charges; it needs enough of both. */
function efficiencyOf(
  bank: ItemOf<'bank'>,
  readings: readonly Reading[],
  delivery: Found | undefined,
): readonly Found[] {
  const cells = intakeCells(bank, readings);
  if (cells.length === 0) return [];
  const intake = countOf(cells);
  const missingOut = delivery?.missing ?? fewestReadings;
  return [
    {
      measure: 'bank-efficiency',
      name: 'What comes out per Wh taken in',
      basis: `Its delivery from full to empty over what it takes in from empty to full; ${efficiencyLack(missingOut, intake.missing)}`,
      cells: [],
      readings: intake.readings + (delivery?.readings ?? 0),
      missing: intake.missing + missingOut,
      estimate: efficiency(delivery?.estimate ?? null, cells),
    },
  ];
}

function efficiencyLack(out: number, taken: number): string {
  if (out === 0 && taken === 0) return 'both from readings through a meter.';
  const lacks = [
    ...(out > 0 ? [`what it delivers ${timesText(out)}`] : []),
    ...(taken > 0 ? [`what it takes in ${timesText(taken)}`] : []),
  ];
  return `still to read through a meter: ${lacks.join(' and ')}.`;
}

function timesText(count: number): string {
  return count === 1 ? 'once more' : `at least ${count} times more`;
}

function efficiency(delivery: Estimate | null, cells: readonly ReadCell[]): Estimate | null {
  const intake = estimateOf(
    cells.map(({ cell }) => cell),
    estimateLevel,
  );
  return delivery === null || intake === null ? null : ratioOf(delivery, intake);
}

/** What the catalogue would have expected, in the unit of the estimate. */
function catalogueValue(item: Item, { measure }: Found): ItemEstimate['catalogue'] {
  if (item.kind === 'bank')
    return measure === 'bank-efficiency'
      ? { value: item.efficiencyIn * item.efficiencyOut, words: 'Efficiency in and out' }
      : { value: labelDeliveryWh(item), words: 'Label and losses' };
  if (item.kind === 'device') return plannedUse(item, measure);
  if (item.kind === 'panel')
    return { value: item.ratedW * item.regulatorEfficiency, words: 'Rating and regulator' };
  if (item.kind !== 'generator-hub') return null;
  return measure === 'hub-yield'
    ? { value: 1, words: `What its ${promiseWord(item)} promises` }
    : hubValue(item);
}

/** The speed that a hub's rating is for, as its field says; its curve is taken there too. */
const ratedAtKmh = 15;

function hubValue({ power }: ItemOf<'generator-hub'>): ItemEstimate['catalogue'] {
  if (power.as === 'rating')
    return { value: power.ratedW, words: `Rating of the hub, at ${ratedAtKmh} km/h` };
  const curve = monotoneCurve(power.points.map(({ speedKmh, powerW }) => ({ x: speedKmh, y: powerW })));
  return { value: curve(ratedAtKmh), words: `Measured curve, at ${ratedAtKmh} km/h` };
}

function labelDeliveryWh(bank: ItemOf<'bank'>): number {
  const { capacity, health, efficiencyOut } = bank;
  return bankCapacityWh(labelWh(capacity), health, null, efficiencyOut) * efficiencyOut;
}

function plannedUse(device: ItemOf<'device'>, measure: Found['measure']): ItemEstimate['catalogue'] {
  const field = measuredField(device, measure);
  return 'why' in field || field.value === null ? null : { value: field.value, words: 'Planned use' };
}

function offerOf(item: Item, found: Found, kept: readonly KeptEstimate[]): EstimateOffer {
  const { measure, estimate, readings } = found;
  const field = measuredField(item, measure);
  if ('why' in field) return { as: 'none', why: field.why };
  if (estimate === null) return { as: 'none', why: 'Too few readings to store a value.' };
  const value = inDigitsKept(estimate.value * field.factor);
  const known = keptInUse(item, measure, kept);
  if (known !== null && known.value === value && known.readings === readings)
    return { as: 'stored', field: field.name, on: known.on, readings: known.readings };
  if (!isTaken(field.put(value, found.cells.at(-1)?.on ?? '2000-01-01')))
    return { as: 'none', why: `${field.name} does not take this value: check the readings.` };
  const from = known === null ? '' : `, ${keptWords(known)}`;
  return { as: 'open', field: field.name, now: `${field.now}${from}` };
}
