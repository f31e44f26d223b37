import type { Band, DayLedger, EnergyMargin, FirstShort, FlatRisk, Spread } from './comparison.ts';
import { formatNumber, marginFigure, wattHours } from './figures.ts';

/* What many histories say, in the words that board, sheet and advice share. */

const hundred = 100;

/** A share as a count of 100: `4 of 100`. What is rare but happens is never rounded to none, nor what is common to all. */
export function ofHundred(share: number, locale?: string): string {
  const count = Math.round(share * hundred);
  if (count === 0 && share > 0) return 'fewer than 1 of 100';
  if (count === hundred && share < 1) return 'more than 99 of 100';
  return `${formatNumber(count, { locale })} of 100`;
}

/** How often a must-have runs flat: `4 of 100`; none and all say how many were drawn. */
export function flatCount({ share }: FlatRisk, histories: number, locale?: string): string {
  const drawn = formatNumber(histories, { locale });
  if (share === 0) return `none of ${drawn}`;
  return share === 1 ? `all ${drawn}` : ofHundred(share, locale);
}

/** The interval of a risk, of 100 as the count before it; none and all, which are not, name their hundred. */
export function riskInterval({ share, low, high }: FlatRisk, locale?: string): string {
  const [from, to] = [low, high].map((edge) => formatNumber(edge * hundred, { locale }));
  return `${from} to ${to}${share === 0 || share === 1 ? ' of 100' : ''}`;
}

/** `a must-have runs flat in 4 of 100 histories (2 to 8)`. */
export function riskText(risk: FlatRisk, histories: number, locale?: string): string {
  return `a must-have runs flat in ${flatCount(risk, histories, locale)} histories (${riskInterval(risk, locale)})`;
}

/** `the phone first, on day 9; at the earliest day 6`. */
export function firstShortText({ device, day, earliestDay }: FirstShort): string {
  const earliest = earliestDay < day ? `; at the earliest day ${earliestDay}` : '';
  return `the ${withinSentence(device)} first, on day ${day}${earliest}`;
}

/** What a spread is in the middle, and where 10 and 90 of 100 stay below: `41 Wh (12 to 58)`. */
export function spreadText(spread: Spread, locale?: string): string {
  return `${wattHours(spread.p50, locale)} (${bandText(spread, locale)})`;
}

/** `12 to 58`, after a figure that names the unit. */
export function bandText({ p10, p90 }: Band, locale?: string): string {
  const [low, high] = [p10, p90].map((edge) => wattHours(edge, locale).replace(/\u00a0Wh$/u, ''));
  return `${low} to ${high}`;
}

/** The margin that half of the histories carry; nothing where it reads like that of the confidence asked for. */
export function usualMargin(margin: EnergyMargin, locale?: string): string {
  const usual = marginFigure({ value: margin.usual, capped: margin.usualCapped }, locale);
  return usual === marginFigure(margin, locale) ? '' : `${usual} in half of them`;
}

/** What would run flat first above a margin, and when; nothing where that is not known. */
export function limitText({ capped, limitedBy }: Pick<EnergyMargin, 'capped' | 'limitedBy'>): string {
  if (capped) return 'no limit found';
  return limitedBy === null ? '' : `limited by ${limitedBy.device}, day ${limitedBy.day}`;
}

/** Who may give more than finds room: `the panel gives`, `panel and hub give`. */
export function unsteadyGivers(days: readonly Pick<DayLedger, 'panel' | 'hub'>[]): string {
  const [panel, hub] = [days.some((day) => day.panel > 0), days.some((day) => day.hub > 0)];
  if (panel && hub) return 'panel and hub give';
  return hub ? 'the hub gives' : 'the panel gives';
}

/** A label inside a sentence: an abbreviation or a name in capitals keeps them. */
export function withinSentence(label: string): string {
  return /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}
