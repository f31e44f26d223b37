import type { Comparison, ScenarioResult, ScoredRow } from './comparison.ts';
import { formatNumber } from './figures.ts';
import { criteria, type Criterion } from './settings.ts';

/* What a scenario's place in the ranking rests on, in the words that board and sheet share. */

const extraFigures = ['minutesLost', 'daysWithoutWall'] as const;
export type ExtraFigure = (typeof extraFigures)[number];

/** The extras that count in a comparison and have no column of their own; the risk always has one. */
export function countedExtras({ scores }: Pick<Comparison, 'scores'>): readonly ExtraFigure[] {
  const [first] = scores;
  return first === undefined ? [] : extraFigures.filter((name) => first.parts[name] !== undefined);
}

/** The figure of an extra; a dash where it is not known. */
export function extraText({ values }: ScenarioResult, name: ExtraFigure, locale?: string): string {
  return formatNumber(values[name], { locale });
}

/** What tells against a scenario in the ranking, what weighs most first. */
export function standingTexts(
  score: ScoredRow,
  { scenarios }: Pick<Comparison, 'scenarios'>,
): readonly string[] {
  const better = scenarios.find(({ id }) => id === score.dominatedBy);
  return [
    ...(score.excludedBy.length > 0 ? [leftOutText(score)] : []),
    ...(score.notKnown.length > 0 ? [`Not known: ${listed(score.notKnown)}.`] : []),
    ...(score.unacceptable.length > 0 ? [`Beyond what you accept: ${listed(score.unacceptable)}.`] : []),
    ...(better === undefined ? [] : [`Dominated by ${better.label}: at least as good in all that counts.`]),
  ];
}

function leftOutText({ excludedBy }: ScoredRow): string {
  return `Left out: ${excludedBy.map(({ text }) => text).join('; ')}.`;
}

function listed(names: readonly Criterion[]): string {
  return names.map((name) => criteria[name].label.toLowerCase()).join(', ');
}

/** Rank and closeness by the second opinion; of a single candidate it has nothing to say. */
export function opinionTexts(
  { topsis }: ScoredRow,
  { scores }: Pick<Comparison, 'scores'>,
  locale?: string,
): readonly string[] {
  const candidates = scores.filter((row) => row.topsis !== null).length;
  if (topsis === null || candidates < 2) return [];
  const closeness = formatNumber(topsis.closeness, { digits: 2, fixed: true, locale });
  return [`Second opinion: rank ${topsis.rank}, closeness ${closeness}.`];
}
