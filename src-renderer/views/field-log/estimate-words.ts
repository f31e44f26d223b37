import { formatNumber, percent } from '../../../shared-types/figures.ts';
import { estimateLevel, type ItemEstimate } from '../../../shared-types/field-log.ts';

type Unit = ItemEstimate['unit'];

const hardSpace = '\u00a0';

/** Three figures tell as much as a meter does. */
function digitsFor(value: number): number {
  if (Math.abs(value) >= 100) return 0;
  return Math.abs(value) >= 10 ? 1 : 2;
}

/** A value of this unit, with its unit. */
export function valueText(value: number, unit: Unit, locale?: string): string {
  if (unit === 'share') return percent(value, { locale });
  return `${formatNumber(value, { digits: digitsFor(value), locale })}${hardSpace}${unit}`;
}

/** `51.3 to 58.8 Wh`. */
export function rangeOfValues(
  low: number,
  high: number,
  unit: Unit,
  locale?: string,
  join: 'to' | 'and' = 'to',
): string {
  const from = valueText(low, unit, locale).replace(`${hardSpace}${unit}`, '');
  return `${from} ${join} ${valueText(high, unit, locale)}`;
}

/** What the readings say, as the title of their figure. */
export function estimateFinding(found: ItemEstimate, label: string, locale?: string): string {
  const { estimate, unit, name } = found;
  if (estimate === null) return `${label}: ${lower(name)} is not known yet`;
  return `${label}: ${lower(name)} is ${valueText(estimate.value, unit, locale)}${againstText(found, locale)}`;
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** How the estimate stands to what the catalogue has; empty where the interval holds both. */
export function againstText({ estimate, catalogue, unit }: ItemEstimate, locale?: string): string {
  if (estimate === null || catalogue === null || catalogue.value === 0) return '';
  const words = `${lower(catalogue.words)} (${valueText(catalogue.value, unit, locale)})`;
  if (catalogue.value >= estimate.low && catalogue.value <= estimate.high) return `, like ${words}`;
  const ratio = estimate.value / catalogue.value;
  if (ratio >= 2) return `, ${formatNumber(ratio, { digits: 1, locale })} times ${words}`;
  const share = percent(Math.abs(ratio - 1), { locale });
  return `, ${share} ${estimate.value < catalogue.value ? 'less' : 'more'} than ${words}`;
}

/** `95 times in 100 such an interval holds the true value: 51 to 59 Wh`, or what is missing. */
export function intervalText({ estimate, unit, missing, measure }: ItemEstimate, locale?: string): string {
  if (estimate !== null)
    return `Between ${rangeOfValues(estimate.low, estimate.high, unit, locale, 'and')} at a level of ${percent(estimateLevel, { locale })}: of a hundred such intervals ${formatNumber(estimateLevel * 100, { locale })} hold the true value.`;
  if (measure === 'bank-efficiency') return 'There are too few readings for an interval.';
  return `${missing === 1 ? 'One more reading that bounds' : `${formatNumber(missing, { locale })} more readings that bound`} it on both sides, and there is an estimate with its interval.`;
}

/** `3 readings count`. */
export function countText({ readings, cells }: ItemEstimate, locale?: string): string {
  const counted = readings === 1 ? '1 reading' : `${formatNumber(readings, { locale })} readings`;
  const open = cells.length - readings;
  if (cells.length === 0 || open <= 0) return counted;
  return `${counted}, and ${formatNumber(open, { locale })} with one bound only`;
}
