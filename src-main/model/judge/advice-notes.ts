import { formatNumber, marginFigure, wordsLocale } from '../../../shared-types/figures.ts';
import { firstShortText, ofHundred, riskText } from '../../../shared-types/history-words.ts';
import { inMoney, type AdvisedScenario, type Drawn, type Standing } from './advised.ts';

/** Scores this close are called close (our choice). */
const closeScore = 0.03;
/** A risk above this is told though the margin is met (our choice). */
const smallRisk = 0.05;
/** A margin this much larger in half of the histories is mostly luck (our choice). */
const luckyShare = 0.25;

/** What else to know before the answer is followed; nothing of a ranking that is clear and safe. */
export function notesOn(standings: readonly Standing[], drawn: Drawn): string[] {
  const [best, ...others] = standings;
  if (best === undefined) return [];
  return [
    ...closeCall(best, others),
    ...riskOf(best.scenario, drawn),
    ...luckOf(best.scenario, drawn),
    ...unconverted(standings),
  ];
}

function closeCall(best: Standing, others: readonly Standing[]): string[] {
  const [second] = others;
  if (second === undefined || Math.abs(best.row.score - second.row.score) >= closeScore) return [];
  if (best.row.unacceptable.length === 0 && second.row.unacceptable.length > 0) return [];
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

function unconverted(standings: readonly Standing[]): string[] {
  return standings
    .filter(({ scenario }) => scenario.notConverted.length > 0)
    .map(
      ({ scenario }) =>
        `${scenario.label} also costs ${scenario.notConverted.map(inMoney).join(' and ')}, which is not converted and not counted.`,
    );
}
