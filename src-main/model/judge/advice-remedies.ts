import type { Remedy } from '../../../shared-types/comparison.ts';
import { marginFigure, wordsLocale } from '../../../shared-types/figures.ts';
import { withinSentence } from '../../../shared-types/history-words.ts';
import { daysText } from './advice-reach.ts';
import type { AdvisedScenario, Situation } from './advised.ts';

/** A change in words, with the margin it gives. */
interface Tried {
  readonly words: string;
  readonly remedy: Remedy;
}

/** What would let the nearest scenario carry the plan, from what was tried, and where it gives out first. */
export function whatWouldCarry(nearest: AdvisedScenario, situation: Situation): string {
  return [...remedySentences(nearest, situation), ...givesOut(nearest)].join(' ');
}

function remedySentences(nearest: AdvisedScenario, { remedies }: Situation): string[] {
  if (remedies === null || remedies.scenarioId !== nearest.id) return [helpInGeneral];
  const { moreNight } = remedies;
  const night: Tried[] =
    moreNight === null
      ? []
      : [{ words: `one more night with a wall, after day ${moreNight.afterDay}`, remedy: moreNight }];
  const items = remedies.items.map((remedy): Tried => ({
    words: `the ${withinSentence(remedy.label)}`,
    remedy,
  }));
  const carrying = [...night, ...items].filter(({ remedy }) => remedy.margin >= 0);
  if (carrying.length > 0) return [`It would carry it with ${carrying.map(withFigure).join(', or with ')}.`];
  return [...notEnough(night, items), ...oftenEnough(nearest)];
}

const helpInGeneral =
  'A night with a wall more, a bank more or less use of what is only nice to have would help.';

function withFigure({ words, remedy: { margin, capped } }: Tried): string {
  return `${words} (${marginFigure({ value: margin, capped }, wordsLocale)})`;
}

/** The best of what was tried, when none of it is enough. */
function notEnough(night: readonly Tried[], items: readonly Tried[]): string[] {
  const [best] = items.toSorted((a, b) => b.remedy.margin - a.remedy.margin);
  const tried = [...night, ...(best === undefined ? [] : [best])];
  if (tried.length === 0) return [];
  const parts = tried.map(withFigure);
  return parts.length === 1
    ? [`Not enough alone: ${parts[0]}.`]
    : [`Not enough alone: ${parts[0]}, or at best of the items ${parts[1]}.`];
}

function oftenEnough({ daysWithoutWall }: AdvisedScenario): string[] {
  return daysWithoutWall >= 1
    ? [`It would carry it with a wall at least every ${daysText(daysWithoutWall)}.`]
    : ['Not even a wall every night would carry it: use less, or take more.'];
}

function givesOut({ margin: { limitedBy } }: AdvisedScenario): string[] {
  if (limitedBy === null) return [];
  return [`The ${withinSentence(limitedBy.device)} is the first to run flat, on day ${limitedBy.day}.`];
}
