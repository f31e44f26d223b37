import type { Advice, EnergyMargin, ScoredRow, Shortfall } from '../../../shared-types/comparison.ts';
import {
  formatNumber,
  grams,
  marginFigure,
  moneyText,
  percent,
  wordsLocale,
} from '../../../shared-types/figures.ts';
import type { Money } from '../../../shared-types/money.ts';
import { criteria } from '../../../shared-types/settings.ts';

/** What the sentences are written from. */
export interface AdvisedScenario {
  readonly id: string;
  readonly label: string;
  readonly toBuy: Money;
  readonly notConverted: readonly Money[];
  readonly carriedG: number;
  readonly frontWheelG: number;
  readonly margin: EnergyMargin;
  readonly firstShort: Shortfall | null;
}

/** Scores this close are called close (our choice). */
const closeScore = 0.03;

interface Standing {
  readonly row: ScoredRow;
  readonly scenario: AdvisedScenario;
}

/**
 * Writes the answer from the ranked results: what to take, the one reason, and what else to know. Every sentence carries
 * its figures; one mean history knows no risk, and the notes say so.
 */
export function advise(
  scenarios: readonly AdvisedScenario[],
  scores: readonly ScoredRow[],
  histories: number,
): Advice {
  const standings = scores.flatMap((row) => {
    const scenario = scenarios.find(({ id }) => id === row.id);
    return scenario === undefined ? [] : [{ row, scenario }];
  });
  const [best, ...others] = standings;
  if (best === undefined) {
    return {
      answer: 'There is nothing to compare yet.',
      why: 'Put together a scenario: check what you would carry, and its figures appear here.',
      notes: [],
    };
  }
  const notes = [...closeCall(best, others), ...unconverted(standings), ...singleHistory(histories)];
  const carrying = standings.filter(({ scenario }) => scenario.margin.value >= 0);
  if (carrying.length === 0) return { answer: nothingCarries(standings), why: whyNothing(standings), notes };
  const answer = best.row.unacceptable.length > 0 ? noneAccepted(best) : take(best);
  return { answer, why: whyBest(best, others), notes };
}

function noneAccepted({ row, scenario }: Standing): string {
  const limits = row.unacceptable.map((name) => criteria[name].label.toLowerCase()).join(' and ');
  return `No scenario stays within what you accept. The nearest by your weights is ${scenario.label}, beyond your limit in ${limits}.`;
}

function take({ scenario }: Standing): string {
  const price =
    scenario.toBuy.minor === 0 ? 'costs nothing more' : `costs ${inMoney(scenario.toBuy)} to complete`;
  const rest = `weighs ${grams(scenario.carriedG, wordsLocale)} and ${price}`;
  if (scenario.margin.value < 0) {
    return `${scenario.label} ranks first by your weights, but does not carry the plan: use must be cut by ${inPercent(-scenario.margin.value)}. It ${rest}.`;
  }
  return `Take ${scenario.label}. It carries ${spare(scenario.margin)} than you plan, ${rest}.`;
}

function spare(margin: EnergyMargin): string {
  return `${margin.capped ? 'over ' : ''}${inPercent(margin.value)} more use`;
}

function whyBest(best: Standing, others: readonly Standing[]): string {
  if (others.length === 0) return 'It is the only scenario; add another to compare.';
  return others
    .slice(0, 2)
    .map((other) => against(best.scenario, other.scenario))
    .join(' ');
}

/** One sentence on what the other scenario lacks, most telling first: it fails, costs more, weighs more, spares less. */
function against(best: AdvisedScenario, other: AdvisedScenario): string {
  if (other.margin.value < 0) return fails(other);
  const extraMinor = other.toBuy.minor - best.toBuy.minor;
  const extraFrontG = other.frontWheelG - best.frontWheelG;
  const points = [
    `carries ${marginFigure(other.margin, wordsLocale)}`,
    ...(extraMinor > 0 ? [`costs ${inMoney({ ...other.toBuy, minor: extraMinor })} more`] : []),
    ...(extraMinor < 0 ? [`costs ${inMoney({ ...other.toBuy, minor: -extraMinor })} less`] : []),
    ...(extraFrontG >= 50 ? [`puts ${grams(extraFrontG, wordsLocale)} more on the front wheel`] : []),
  ];
  return `${other.label} ${points.join(', ')}.`;
}

function fails(scenario: AdvisedScenario): string {
  const first = scenario.firstShort;
  const when = first === null ? '' : ` or the ${lower(first.device)} runs flat on day ${first.day}`;
  return `${scenario.label} does not carry the plan: use must be cut by ${inPercent(-scenario.margin.value)}${when}.`;
}

function nothingCarries(standings: readonly Standing[]): string {
  const closest = nearest(standings);
  if (closest.margin.value <= -1) {
    return 'No scenario keeps a must-have charged: the kits have no source that lasts, or no must-have could ever be full.';
  }
  return `No scenario carries the plan. The nearest is ${closest.label}: use must be cut by ${inPercent(-closest.margin.value)}.`;
}

function whyNothing(standings: readonly Standing[]): string {
  const closest = nearest(standings);
  const limit = closest.margin.limitedBy;
  const where =
    limit === null ? '' : ` The ${lower(limit.device)} is the first to run flat, on day ${limit.day}.`;
  return `A night with a wall more, a bank more or less use of what is only nice to have would help.${where}`;
}

function nearest(standings: readonly Standing[]): AdvisedScenario {
  return standings.reduce((a, b) => (b.scenario.margin.value > a.scenario.margin.value ? b : a)).scenario;
}

function closeCall(best: Standing, others: readonly Standing[]): string[] {
  const [second] = others;
  if (second === undefined || Math.abs(best.row.score - second.row.score) >= closeScore) return [];
  if (best.row.unacceptable.length === 0 && second.row.unacceptable.length > 0) return [];
  return [
    `It is close: by your weights ${second.scenario.label} scores ${whole(second.row.score * 100)} of 100, the first ${whole(best.row.score * 100)}.`,
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

function singleHistory(histories: number): string[] {
  return histories > 1
    ? []
    : [
        'Figures are for mean weather and mean luck with outlets; a run of dull days is worse. Carry a reserve.',
      ];
}

/** Device labels stand inside a sentence; an abbreviation or a proper name in capitals keeps them. */
function lower(label: string): string {
  return /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}

function whole(value: number): string {
  return formatNumber(value, { locale: wordsLocale });
}

function inPercent(share: number): string {
  return percent(share, { locale: wordsLocale });
}

function inMoney(value: Money): string {
  return moneyText(value, wordsLocale);
}
