import type { BeforeAfter, Upgrade, UpgradeOnTour, UpgradeQuestion } from '../../../shared-types/upgrade.ts';
import { formatNumber, marginFigure, moneyText, wattHours, withUnit } from '../../../shared-types/figures.ts';
import { flatCount } from '../../../shared-types/history-words.ts';
import { display } from '../../state/display.svelte.ts';

/** A figure before and after a change, and what lies between. */
export interface Change {
  readonly from: string;
  readonly to: string;
  /** The difference; empty where the two say it all. */
  readonly difference: string;
}

/** Why nothing can be checked yet; null when all is chosen. */
export function whyNotYet({ add, remove, tourIds }: UpgradeQuestion): string | null {
  if (add.length + remove.length === 0) return 'Choose what comes in or what goes out.';
  return tourIds?.length === 0 ? 'Choose at least one tour.' : null;
}

function changeOf(
  { before, after }: BeforeAfter,
  text: (value: number) => string,
  difference: (value: number) => string,
): Change {
  const same = text(before) === text(after);
  return { from: text(before), to: text(after), difference: same ? '' : difference(after - before) };
}

export function scoreChange({ score }: UpgradeOnTour, locale?: string): Change {
  const points = (value: number): string => formatNumber(value * 100, { locale });
  return changeOf(score, points, (value) => formatNumber(value * 100, { signed: true, locale }));
}

export function marginChange({ margin, marginText }: UpgradeOnTour, locale?: string): Change {
  const { before, after, cappedBefore, cappedAfter } = margin;
  return {
    from: marginFigure({ value: before, capped: cappedBefore }, locale),
    to: marginFigure({ value: after, capped: cappedAfter }, locale),
    difference: marginText,
  };
}

/** How often a must-have runs flat, and which histories the change mends or spoils. */
export function riskChange(tour: UpgradeOnTour, histories: number, locale?: string): Change {
  const { risk, mended, spoiled } = tour;
  const told = [
    ...(mended > 0 ? [`${formatNumber(mended, { locale })} mended`] : []),
    ...(spoiled > 0 ? [`${formatNumber(spoiled, { locale })} spoiled`] : []),
  ];
  return {
    from: flatCount(risk.before, histories, locale),
    to: flatCount(risk.after, histories, locale),
    difference: told.length === 0 ? '' : `${told.join(', ')} of ${formatNumber(histories, { locale })}`,
  };
}

export function minutesChange({ minutesLost }: UpgradeOnTour, locale?: string): Change {
  const minutes = (value: number, signed = false): string =>
    withUnit(value, 'min', { digits: 1, signed, locale });
  return changeOf(minutesLost, minutes, (value) => minutes(value, true));
}

export function nightsChange({ wallNights: { before, after } }: UpgradeOnTour, locale?: string): Change {
  const nights = (value: number | null): string =>
    value === null ? 'more than all' : formatNumber(value, { locale });
  const known = before !== null && after !== null && before !== after;
  return {
    from: nights(before),
    to: nights(after),
    difference: known ? formatNumber(after - before, { signed: true, locale }) : '',
  };
}

export function gramsChange(change: BeforeAfter, locale?: string): string {
  const difference = display.mass(change.after - change.before, { signed: true, locale });
  return `${difference}, from ${display.mass(change.before, { locale })} to ${display.mass(change.after, { locale })}`;
}

/** `84 EUR: 90 EUR to buy less 6 EUR of resale`. */
export function moneyWords({ money }: Pick<Upgrade, 'money'>, locale?: string): string {
  const { net, toBuy, resale, apart } = money;
  const parts =
    resale.minor === 0
      ? ''
      : `: ${moneyText(toBuy, locale)} to buy less ${moneyText(resale, locale)} of resale`;
  const beside = [
    ...apart.toBuy.map((each) => `${moneyText(each, locale)} to buy`),
    ...apart.resale.map((each) => `${moneyText(each, locale)} of resale`),
  ];
  const notConverted = beside.length === 0 ? '' : `; not converted and not counted: ${beside.join(', ')}`;
  return `${moneyText(net, locale)}${parts}${notConverted}`;
}

export function extraEnergy({ extraWhPerDay, margin }: UpgradeOnTour, locale?: string): string {
  if (!Number.isFinite(extraWhPerDay)) return 'not known';
  const atLeast = margin.cappedAfter && !margin.cappedBefore ? 'at least ' : '';
  const sign = extraWhPerDay > 0 ? '+' : '';
  return `${atLeast}${sign}${wattHours(extraWhPerDay, locale)}`;
}
