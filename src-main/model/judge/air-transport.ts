import type {
  AirCheck,
  AirClass,
  AirKind,
  AirLine,
  AirTally,
  CheckedAirLine,
} from '../../../shared-types/air-check.ts';
import {
  airRules,
  approvableWh,
  mostDevices,
  mostLargeSpares,
  mostPowerBanks,
  noApprovalWh,
  whoDecides,
} from './air-rules.ts';
import { toDoWith, verdictText } from './air-words.ts';

/** Mildest first. */
const severity: readonly AirClass[] = ['within', 'approval', 'stays-home'];

/**
 * Holds the batteries that one person carries against the rules of `air-rules.ts`.
 *
 * @param lines batteries by sort, with the energy of the label, Wh; what is no number stays at home
 */
export function airCheck(lines: readonly AirLine[]): AirCheck {
  const checked = lines.map(checkedLine);
  const tallies = talliesOf(checked);
  const called = [
    ...checked.map((line) => line.class),
    ...tallies.filter(({ carried, most }) => carried > most).map(({ beyond }) => beyond),
  ];
  return {
    lines: checked,
    tallies,
    verdict: {
      class: severity.findLast((airClass) => called.includes(airClass)) ?? 'within',
      text: verdictText(checked, tallies),
    },
    defer: whoDecides,
    rules: airRules,
  };
}

function checkedLine(line: AirLine): CheckedAirLine {
  const airClass = classOf(line.labelWh);
  return { ...line, class: airClass, toDo: toDoWith(line.kind, airClass) };
}

/** Exactly 100 and exactly 160 Wh are inside their class; no label of mAh and volts that comes to them is rounded above. */
function classOf(labelWh: number): AirClass {
  if (labelWh <= noApprovalWh) return 'within';
  return labelWh <= approvableWh ? 'approval' : 'stays-home';
}

/** What stays at home for its watt-hours is in none of them. */
function talliesOf(lines: readonly CheckedAirLine[]): readonly AirTally[] {
  const left = lines.filter((line) => line.class !== 'stays-home');
  const large = left.filter((line) => line.class === 'approval');
  return [
    {
      what: 'power banks',
      carried: piecesOf(left, 'power-bank'),
      most: mostPowerBanks,
      beyond: 'stays-home',
    },
    {
      what: `power banks and spare batteries over ${noApprovalWh} Wh`,
      carried: piecesOf(large, 'power-bank') + piecesOf(large, 'spare-battery'),
      most: mostLargeSpares,
      beyond: 'stays-home',
    },
    { what: 'devices', carried: piecesOf(left, 'in-device'), most: mostDevices, beyond: 'approval' },
  ];
}

function piecesOf(lines: readonly AirLine[], kind: AirKind): number {
  return lines.filter((line) => line.kind === kind).reduce((sum, { count }) => sum + count, 0);
}
