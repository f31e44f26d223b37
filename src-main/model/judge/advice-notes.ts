import { formatNumber, marginFigure, percent, wordsLocale } from '../../../shared-types/figures.ts';
import { firstShortText, ofHundred, riskText } from '../../../shared-types/history-words.ts';
import { firstKitOf } from './advice-first-kit.ts';
import { reachOf } from './advice-reach.ts';
import { inMoney, type AdvisedScenario, type Drawn, type Situation, type Standing } from './advised.ts';

/** Scores this close are called close (our choice). */
const closeScore = 0.03;
/** A risk above this is told though the margin is met (our choice). */
const smallRisk = 0.05;
/** A margin this much larger in half of the histories is mostly luck (our choice). */
const luckyShare = 0.25;

/** Spilling this much, a source is larger than the plan needs (our choice). */
const muchSpilled = 0.4;

/** What else to know before the answer is followed; nothing of a ranking that is clear and safe. */
export function notesOn(standings: readonly Standing[], situation: Situation): string[] {
  const [best, ...others] = standings;
  if (best === undefined) return [];
  return [
    ...closeCall(best, others),
    ...riskOf(best.scenario, situation),
    ...luckOf(best.scenario, situation),
    ...spillOf(best.scenario),
    ...reachOf(standings, situation),
    ...firstKitOf(best, situation),
    ...secondOpinion(best, others),
    ...unconverted(standings),
    ...leftOut(standings),
  ];
}

function closeCall(best: Standing, others: readonly Standing[]): string[] {
  const [second] = others;
  if (second === undefined || Math.abs(best.row.score - second.row.score) >= closeScore) return [];
  if (best.row.unacceptable.length === 0 && second.row.unacceptable.length > 0) return [];
  if (second.row.excludedBy.length > 0) return [];
  const points = ({ row }: Standing): string => formatNumber(row.score * 100, { locale: wordsLocale });
  return [
    `It is close: by your weights ${second.scenario.label} scores ${points(second)} of 100, the first ${points(best)}.`,
  ];
}

function riskOf({ label, risk, firstShort }: AdvisedScenario, { histories }: Drawn): string[] {
  if (risk.share <= smallRisk) return [];
  const first = firstShort === null ? '' : `, ${firstShortText(firstShort)}`;
  return [`With ${label} ${riskText(risk, histories, wordsLocale)}${first}.`];
}

function luckOf({ label, margin }: AdvisedScenario, { confidence }: Drawn): string[] {
  if (margin.usual - margin.value <= luckyShare) return [];
  const usual = marginFigure({ value: margin.usual, capped: margin.usualCapped }, wordsLocale);
  const sure = marginFigure(margin, wordsLocale);
  return [
    `Much of what ${label} has to spare is luck: ${usual} in half of the histories, only ${sure} in ${ofHundred(confidence, wordsLocale)}.`,
  ];
}

/** TOPSIS may see it otherwise: two ways of reckoning that differ are never kept quiet. */
function secondOpinion(best: Standing, others: readonly Standing[]): string[] {
  const first = others.find(({ row }) => row.topsis?.rank === 1);
  if (first === undefined || best.row.topsis === null || best.row.topsis.rank === 1) return [];
  const nearness = ({ row }: Standing): string =>
    formatNumber(row.topsis?.closeness ?? NaN, { digits: 2, fixed: true, locale: wordsLocale });
  return [
    `The second opinion differs: by nearness to the best of every figure (TOPSIS) ${first.scenario.label} is first with ${nearness(first)} of 1, ${best.scenario.label} has ${nearness(best)}.`,
  ];
}

function leftOut(standings: readonly Standing[]): string[] {
  return standings
    .filter(({ row }) => row.excludedBy.length > 0)
    .map(({ row, scenario }) => {
      const why = row.excludedBy.map(({ text }) => `it ${text}`).join('; ');
      return `${scenario.label} is left out: ${why}.`;
    });
}

function spillOf({ label, spilledShare, margin }: AdvisedScenario): string[] {
  if (spilledShare < muchSpilled || margin.value <= 0) return [];
  const share = percent(spilledShare, { locale: wordsLocale });
  return [`Of what ${label} takes from sun and wheel, ${share} finds no room: a smaller source would do.`];
}

function unconverted(standings: readonly Standing[]): string[] {
  return standings
    .filter(({ scenario }) => scenario.notConverted.length > 0)
    .map(
      ({ scenario }) =>
        `${scenario.label} also costs ${scenario.notConverted.map(inMoney).join(' and ')}, which is not converted and not counted.`,
    );
}
