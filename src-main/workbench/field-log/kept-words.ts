import { fullDate } from '../../../shared-types/dates.ts';
import { measureUnits, type KeptEstimate, type MeasureUnit } from '../../../shared-types/field-log.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { decimal, inPercent } from '../assemble/words.ts';

/** `measured on 3 May 2027`. */
export function measuredOn(on: string): string {
  return `measured on ${fullDate(on, wordsLocale)}`;
}

/** What a stored value rests on: `from 6 readings, 61 to 68 Wh`. */
export function keptWords({ measure, readings, low, high }: KeptEstimate): string {
  const unit = measureUnits[measure];
  return `from ${countOfReadings(readings)}, ${figure(low, unit)} to ${figure(high, unit)}${unitAfter(unit)}`;
}

export function countOfReadings(readings: number): string {
  return readings === 1 ? '1 reading' : `${decimal(readings)} readings`;
}

/** A meter has no more than three digits to give. */
function digitsFor(value: number): number {
  if (value >= 100) return 0;
  return value >= 10 ? 1 : 2;
}

function figure(value: number, unit: MeasureUnit): string {
  return unit === 'share' ? inPercent(value) : decimal(value, digitsFor(value));
}

function unitAfter(unit: MeasureUnit): string {
  return unit === 'share' ? '' : ` ${unit}`;
}
