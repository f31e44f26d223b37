import type { Advice, EnergyMargin, ScoredRow } from '../../../shared-types/comparison.ts';
import { grams, marginFigure, wordsLocale } from '../../../shared-types/figures.ts';
import { flatCount, withinSentence } from '../../../shared-types/history-words.ts';
import { criteria, type Criterion } from '../../../shared-types/settings.ts';
import { notesOn } from './advice-notes.ts';
import { whatWouldCarry } from './advice-remedies.ts';
import {
  inMoney,
  inPercent,
  mostHistories,
  type AdvisedScenario,
  type Drawn,
  type Situation,
  type Standing,
} from './advised.ts';

/**
 * Writes the answer from the ranked results: what to take, the one reason, and what else to know. Every sentence carries
 * its figures, and the answer says in how many histories it holds.
 */
export function advise(
  scenarios: readonly AdvisedScenario[],
  scores: readonly ScoredRow[],
  situation: Situation,
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
  const notes = notesOn(standings, situation);
  if (best.row.excludedBy.length > 0)
    return { answer: noneWithin(best), why: 'Ease a limit, or compare other kits.', notes };
  const within = standings.filter(({ row }) => row.excludedBy.length === 0);
  if (within.every(({ scenario }) => scenario.margin.value < 0)) {
    const closest = nearest(within);
    return {
      answer: nothingCarries(closest, situation),
      why: whatWouldCarry(closest, situation),
      notes,
    };
  }
  const answer = answerOf(best, situation);
  return { answer, why: whyBest(best, others, situation), notes };
}

function answerOf(best: Standing, situation: Situation): string {
  if (best.row.notKnown.length > 0) return notKnown(best);
  return best.row.unacceptable.length > 0 ? noneAccepted(best) : take(best, situation);
}

function notKnown({ row, scenario }: Standing): string {
  return `No scenario has all the figures that count for you. The first by those known is ${scenario.label}, without ${namesOf(row.notKnown)}.`;
}

function namesOf(names: readonly Criterion[]): string {
  return names.map((name) => criteria[name].label.toLowerCase()).join(' and ');
}

/** Rows left out by a limit rank last: when the first is, all are. */
function noneWithin({ row, scenario }: Standing): string {
  const why = row.excludedBy.map(({ text }) => `it ${text}`).join('; ');
  return `No scenario stays within your limits. The nearest by your weights is ${scenario.label}: ${why}.`;
}

function noneAccepted({ row, scenario }: Standing): string {
  return `No scenario stays within what you accept. The nearest by your weights is ${scenario.label}, beyond your limit in ${namesOf(row.unacceptable)}.`;
}

function take({ scenario }: Standing, drawn: Drawn): string {
  const price =
    scenario.toBuy.minor === 0 ? 'costs nothing more' : `costs ${inMoney(scenario.toBuy)} to complete`;
  const rest = `weighs ${grams(scenario.carriedG, wordsLocale)} and ${price}`;
  const often = `in ${mostHistories(drawn)}`;
  if (scenario.margin.value < 0) {
    return `${scenario.label} ranks first by your weights, but does not carry the plan ${often}: use must be cut by ${inPercent(-scenario.margin.value)}. It ${rest}.`;
  }
  return `Take ${scenario.label}. It carries ${spare(scenario.margin)} than you plan ${often}, ${rest}.`;
}

function spare(margin: EnergyMargin): string {
  return `${margin.capped ? 'over ' : ''}${inPercent(margin.value)} more use`;
}

function whyBest(best: Standing, others: readonly Standing[], drawn: Drawn): string {
  if (others.length === 0) return 'It is the only scenario; add another to compare.';
  return others
    .slice(0, 2)
    .map((other) => against(best.scenario, other.scenario, drawn))
    .join(' ');
}

/** One sentence on what the other scenario lacks, most telling first: it fails, costs more, weighs more, spares less. */
function against(best: AdvisedScenario, other: AdvisedScenario, drawn: Drawn): string {
  if (other.margin.value < 0) return fails(other, drawn);
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

function fails({ label, margin, risk, firstShort }: AdvisedScenario, { histories }: Drawn): string {
  const first =
    firstShort === null ? '' : `, the ${withinSentence(firstShort.device)} first, on day ${firstShort.day}`;
  const often = `${flatCount(risk, histories, wordsLocale)} histories`;
  const cut = `use must be cut by ${inPercent(-margin.value)}`;
  return `${label} does not carry the plan: ${cut}, or a must-have runs flat in ${often}${first}.`;
}

function nothingCarries(closest: AdvisedScenario, drawn: Drawn): string {
  if (closest.margin.value <= -1) {
    return 'No scenario keeps a must-have charged: the kits have no source that lasts, or no must-have could ever be full.';
  }
  const cut = inPercent(-closest.margin.value);
  return `No scenario carries the plan in ${mostHistories(drawn)}. The nearest is ${closest.label}: use must be cut by ${cut}.`;
}

function nearest(standings: readonly Standing[]): AdvisedScenario {
  return standings.reduce((a, b) => (b.scenario.margin.value > a.scenario.margin.value ? b : a)).scenario;
}
