import {
  airLineName,
  type AirClass,
  type AirKind,
  type AirTally,
  type CheckedAirLine,
} from '../../../shared-types/air-check.ts';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import { approvableWh, noApprovalWh } from './air-rules.ts';

const handling: Readonly<Record<AirKind, string>> = {
  'power-bank': 'Cabin only, terminals protected; not recharged on board.',
  'spare-battery': 'Cabin only, the terminals of each protected.',
  'in-device': 'Best in the cabin; in the hold only switched off and protected.',
};

/** What the rider must do with batteries of a class. */
export function toDoWith(kind: AirKind, airClass: AirClass): string {
  switch (airClass) {
    case 'within':
      return handling[kind];
    case 'approval':
      return `Ask the airline for its approval: over ${noApprovalWh} Wh. ${handling[kind]}`;
    case 'stays-home':
      return `Stays at home: over ${approvableWh} Wh.`;
  }
}

/** What a kit comes to in a sentence or two, each with its reasons. */
export function verdictText(lines: readonly CheckedAirLine[], tallies: readonly AirTally[]): string {
  const reasons = (airClass: AirTally['beyond']): string =>
    [
      ...lines.filter((line) => line.class === airClass).map(tooLarge),
      ...tallies.filter(({ beyond }) => beyond === airClass).flatMap(tooMany),
    ].join('; ');
  const [home, approval] = [reasons('stays-home'), reasons('approval')];
  if (home === '' && approval === '') return 'Nothing here is over the limits listed.';
  return [
    ...(home === '' ? [] : [`Does not fly as packed: ${home}.`]),
    ...(approval === '' ? [] : [`Needs the airline’s approval: ${approval}.`]),
  ].join(' ');
}

function tooLarge(line: CheckedAirLine): string {
  const limitWh = line.class === 'stays-home' ? approvableWh : noApprovalWh;
  return `${airLineName(line, wordsLocale)} (over ${limitWh} Wh)`;
}

function tooMany({ what, carried, most }: AirTally): readonly string[] {
  return carried > most ? [`${inWords(carried)} ${what}, at most ${inWords(most)} a person`] : [];
}

function inWords(count: number): string {
  return formatNumber(count, { locale: wordsLocale });
}
