import { wattHours, withUnit } from '../../../../shared-types/figures.ts';
import type { LegSun, PanelSun, SunBy, SunPeriod } from '../../../../shared-types/leg-sun.ts';
import { periodPhrase } from './periods.ts';

/** Less than this is nothing, Wh a day. */
const worthSayingWh = 0.05;

/** What the sun gives on the leg, in a sentence; `ridden` are the periods the leg is ridden in. */
export function sunFinding(
  { aimedOverFlat, panels }: Pick<LegSun, 'aimedOverFlat' | 'panels'>,
  ridden: readonly SunPeriod[],
  locale?: string,
): string {
  if (aimedOverFlat === null) return 'The sun stays down all through this leg';
  const [panel] = panels;
  if (panel !== undefined) return panelFinding(panel, locale);
  const sum = ridden.reduce((total, { radiationKWhM2 }) => total + radiationKWhM2.mean, 0);
  return `The sun gives about ${radiationText(sum / ridden.length, locale)} a day; no panel is in the inventory`;
}

function panelFinding({ label, usualDayWh, dullWeekWh, goodDayWh }: PanelSun, locale?: string): string {
  if (goodDayWh < worthSayingWh) return `${label} gives nothing as it lies here`;
  const dull = wattHours(dullWeekWh, locale);
  return `${label} gives about ${wattHours(usualDayWh, locale)} a day; in a dull week ${dull}`;
}

export function radiationText(kWhM2: number, locale?: string): string {
  return withUnit(kWhM2, 'kWh/m²', { digits: 1, fixed: true, locale });
}

/**
 * Means closer than this share of the greatest are taken for the same: those of 200 drawn histories are out by some 3 % either
 * way, and the extremes of many days by more (standard error of a mean; the share itself is common practice, no source).
 */
const sameWithin = 0.15;

interface Course {
  readonly by: SunBy;
  readonly text: (value: number, locale?: string) => string;
  readonly locale?: string;
}

/** What the bars of a chart show: the least and the greatest of them, or what they all come to. */
export function courseFinding(
  periods: readonly Pick<SunPeriod, 'date'>[],
  means: readonly number[],
  { by, text, locale }: Course,
): string {
  const least = Math.min(...means);
  const most = Math.max(...means);
  if (means.length === 0 || most - least <= most * sameWithin) {
    const sum = means.reduce((total, mean) => total + mean, 0);
    return `On average ${text(sum / Math.max(1, means.length), locale)} a day all through`;
  }
  const at = (mean: number): string => periodPhrase(periods[means.indexOf(mean)]!.date, by, locale);
  return `From ${text(least, locale)} a day ${at(least)} to ${text(most, locale)} ${at(most)}`;
}
