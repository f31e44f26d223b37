import type { ScoredRow } from '../../../shared-types/comparison.ts';
import { formatNumber, marginFigure, wordsLocale } from '../../../shared-types/figures.ts';
import { criteria, criterionNames } from '../../../shared-types/settings.ts';
import type { BeforeAfter, PairedMargin, UpgradeOnTour } from '../../../shared-types/upgrade.ts';
import { failsWithIt, isClear, turnsToCarried } from './upgrade-effect.ts';

/** What the sentence on a tour is written from. */
export interface Told extends Pick<UpgradeOnTour, 'label' | 'effect' | 'changesNothing' | 'margin'> {
  readonly rows: BeforeAfter<ScoredRow>;
}

const points = (share: number, signed = false): string =>
  formatNumber(share * 100, { signed, locale: wordsLocale });

/**
 * How a change moves the margin, with the 95 % interval: `20 points more (15 to 26)`. An interval that holds 0 is never told as
 * more or less.
 */
export function marginChangeText({ cappedBefore, cappedAfter, difference, low, high }: PairedMargin): string {
  if (Number.isNaN(difference)) return 'not known';
  if (cappedBefore && cappedAfter) return 'both carry more than the most that is tried';
  if (low === 0 && high === 0) return 'no difference';
  if (!isClear({ low, high }))
    return `no clear difference (${points(low, true)} to ${points(high, true)} points)`;
  const atLeast = (difference > 0 ? cappedAfter : cappedBefore) ? 'at least ' : '';
  const [least, most] = difference > 0 ? [low, high] : [-high, -low];
  const size = points(Math.abs(difference));
  return `${atLeast}${size} ${size === '1' ? 'point' : 'points'} ${difference > 0 ? 'more' : 'less'} (${points(least)} to ${points(most)})`;
}

/** `energy margin from −12 % to +8 %, 20 points more (15 to 26)`. */
function marginMove(margin: PairedMargin): string {
  const [from, to] = [
    marginFigure({ value: margin.before, capped: margin.cappedBefore }, wordsLocale),
    marginFigure({ value: margin.after, capped: margin.cappedAfter }, wordsLocale),
  ];
  const change = marginChangeText(margin);
  return from === to ? `energy margin ${from}, ${change}` : `energy margin from ${from} to ${to}, ${change}`;
}

/** What a criterion scores less or more than this is not worth a word (our choice). */
const noticeablePart = 0.01;

function scoreMove({ before, after }: BeforeAfter<ScoredRow>): string {
  const [from, to] = [points(before.score), points(after.score)];
  if (from === to) return `scores ${to} of 100 as before`;
  const rises = after.score > before.score;
  const moved = criterionNames.filter((name) => {
    const gain = (after.parts[name] ?? 0) - (before.parts[name] ?? 0);
    return (rises ? gain : -gain) >= noticeablePart;
  });
  const where = moved.map((name) => criteria[name].label.toLowerCase()).join(', ');
  const why = where === '' ? '' : ` (${rises ? 'better' : 'worse'}: ${where})`;
  return `scores ${to} of 100 instead of ${from}${why}`;
}

/** What a change does to a tour and why, with the figures it rests on. */
export function tourSentence(told: Told): string {
  const { label, effect, changesNothing, margin, rows } = told;
  switch (effect) {
    case 'not-known':
      return `${label}: a figure is not known (${unknownNames(rows)}), so there is no verdict.`;
    case 'helps':
      return turnsToCarried(told)
        ? `${label}: it carries the plan, which fails without it: ${marginMove(margin)}.`
        : `${label}: it ${scoreMove(rows)}; ${marginMove(margin)}.`;
    case 'not-enough':
      return isClear(margin)
        ? `${label}: better, but still not carried: ${marginMove(margin)}.`
        : `${label}: it ${scoreMove(rows)}, but the plan is still not carried: ${marginMove(margin)}.`;
    case 'hurts':
      return `${label}: ${whyItHurts(told)}; ${marginMove(margin)}.`;
    case 'no-odds':
      return changesNothing
        ? `${label}: it changes nothing: margin, risk and nights with a wall stay as they are; it ${scoreMove(rows)}.`
        : `${label}: no odds by your weights: it ${scoreMove(rows)}; ${marginMove(margin)}.`;
  }
}

function whyItHurts(told: Told): string {
  const { before, after } = told.rows;
  const limits = after.excludedBy.filter(({ limit }) =>
    before.excludedBy.every((old) => old.limit !== limit),
  );
  if (limits.length > 0) return limits.map(({ text }) => `it ${text}`).join('; ');
  if (failsWithIt(told)) return 'the plan, carried before, fails with it';
  const beyond = after.unacceptable.filter((name) => !before.unacceptable.includes(name));
  if (beyond.length > 0)
    return `it lies beyond what you accept (${beyond.map((name) => criteria[name].label).join(', ')})`;
  const same = told.changesNothing
    ? 'it leaves margin, risk and nights with a wall as they are, and '
    : 'it ';
  return `${same}${scoreMove(told.rows)}`;
}

function unknownNames({ before, after }: BeforeAfter<ScoredRow>): string {
  const names = [...new Set([...before.notKnown, ...after.notKnown])];
  return names.length === 0 ? criteria.margin.label : names.map((name) => criteria[name].label).join(', ');
}
