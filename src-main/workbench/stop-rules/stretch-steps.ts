import { wattHours, wordsLocale } from '../../../shared-types/figures.ts';
import { ofHundred, unsteadyGivers } from '../../../shared-types/history-words.ts';
import { inList, quoted } from './name-list.ts';
import { ofMustHaves, type DaySpan } from './plug-use.ts';
import type { RulesGround } from './rules-ground.ts';
import { longestStretch, wallDays, type Stretch } from './stretch.ts';
import { stretchStart, type LitBank, type StretchStart } from './stretch-start.ts';
import { throughBank } from './through-bank.ts';

/**
 * The longest way between walls: where it lies, what it takes, what to start it with, and how often that falls short. Each step can
 * be read alone: a sheet may part them. Nothing without a must-have in use.
 */
export function stretchSteps(ground: RulesGround): readonly string[] {
  const stretch = longestStretch(ground);
  const useWh = ofMustHaves(ground.ready, stretch.deviceWh);
  if (useWh <= 0) return [];
  return [
    `${whereItIs(stretch, ground)} Over it the must-haves use about ${inWh(useWh)} at the plug, as planned.`,
    ...givenOn(stretch, ground),
    startWords(stretchStart(stretch, ground), stretch.sourcesWh > 0),
    ...riskOn(stretch, ground),
  ];
}

const inWh = (wh: number): string => wattHours(wh, wordsLocale);

function whereItIs({ firstDay, lastDay }: Stretch, ground: RulesGround): string {
  const [from, to] = [firstDay + 1, lastDay + 1];
  if (wallDays(ground).length === 0)
    return 'No night of the tour has a wall that fills this kit: all its days are one long stretch.';
  return from === to
    ? `There is a wall every night; the longest stretch between two is day ${from}.`
    : `The longest stretch without an expected wall is from day ${from} to day ${to}.`;
}

function givenOn({ sourcesWh }: Stretch, { rules, lines, days }: RulesGround): readonly string[] {
  if (sourcesWh <= 0) return [];
  const given = `On mean days ${unsteadyGivers(days)} about ${inWh(sourcesWh)} over the longest stretch`;
  const share = throughBank(rules, lines);
  if (share === 0) return [`${given}, but there is no bank to take it.`];
  return [
    share < 1 ? `${given}; about ${inWh(sourcesWh * share)} of it comes out of the bank.` : `${given}.`,
  ];
}

const startOf = 'Start the longest stretch with';

/** Weather strays from its mean, so what rests on it is the least. */
function startWords(start: StretchStart, onMeanDays: boolean): string {
  const least = onMeanDays ? ' That is the least, for mean days: fill more where the wall allows.' : '';
  switch (start.as) {
    case 'must-haves':
      return `${startOf} the must-haves full.${least}`;
    case 'lights':
      return `${startOf} the must-haves full and at least ${inList(start.banks.map(litWords))}.${least}`;
    case 'all-full':
      return `${startOf} the must-haves and all banks full.`;
    case 'short':
      return `${startOf} everything full, and save from its first day: by these figures about ${inWh(start.lackingWh)} are lacking.`;
  }
}

function litWords({ bank, pieces, lit, of }: LitBank): string {
  const which = pieces === 1 ? quoted(bank) : `each of ${pieces} × ${quoted(bank)}`;
  return `${lit} of ${of} lights on ${which}`;
}

/** What the drawn histories say of the legs that the stretch lies on; nothing of a leg that they carry. */
function riskOn(stretch: DaySpan, { legs }: RulesGround): readonly string[] {
  let firstDay = 0;
  return legs.flatMap(({ leg, days, risk }) => {
    const legFirst = firstDay;
    firstDay += days;
    const isOn = legFirst <= stretch.lastDay && stretch.firstDay < firstDay;
    if (!isOn || risk.share === 0) return [];
    return [
      `As planned, a must-have is flat on ${quoted(leg)} in ${ofHundred(risk.share, wordsLocale)} histories.`,
    ];
  });
}
