import { nightOf, type Leg } from '../../../shared-types/tour.ts';
import type { Network } from '../../model/flow/network.ts';
import { inPercent } from '../assemble/words.ts';
import { ofKind } from '../assemble/kit.ts';
import { inList, namesOf } from './name-list.ts';
import type { RulesGround } from './rules-ground.ts';
import { lostInBank, type BankLine } from './through-bank.ts';

/** What goes first at a wall, and what is different at a campsite post. */
export function wallSteps({ rules, lines, ready }: RulesGround): readonly string[] {
  const { network } = ready;
  const banks = ofKind(lines, 'bank');
  return [
    ...orderSteps(rules.atWall, network, banks),
    ...mustHaveSteps(network),
    ...niceToHaveSteps(network),
  ];
}

function orderSteps(
  atWall: RulesGround['rules']['atWall'],
  { deviceCount }: Network,
  banks: readonly BankLine[],
): readonly string[] {
  if (banks.length === 0) return deviceCount === 0 ? [] : ['At a wall plug in the devices.'];
  if (deviceCount === 0) return ['At a wall fill the banks.'];
  const lost = lostWords(banks);
  return [
    atWall === 'devices-first'
      ? `At a wall plug in the devices first, then the banks: a bank in between costs ${lost} of what passes through it.`
      : `At a wall fill the banks first, then the devices; only what would run flat is fed before. What goes through a bank loses ${lost} in it.`,
  ];
}

/** `22 %`, or `18 % to 25 %` where banks differ. */
function lostWords(banks: readonly BankLine[]): string {
  const lost = banks.map(lostInBank);
  const [least, most] = [inPercent(Math.min(...lost)), inPercent(Math.max(...lost))];
  return least === most ? most : `${least} to ${most}`;
}

function mustHaveSteps(network: Network): readonly string[] {
  const names = namesOf(mustHavesByNeed(network));
  if (names.length === 0) return [];
  if (names.length === 1) return [`Of the devices the must-have goes first: ${names.join()}.`];
  return [
    `Of the devices must-haves go first, and of them the one that would run flat soonest. When all are full that is ${names.join(', then ')}.`,
  ];
}

/** As `orderByNeed` has them when all batteries are full: the one that lasts least long first. */
function mustHavesByNeed({ devices, capacityWh, typicalUseW }: Network): readonly string[] {
  const hoursOf = (d: number): number => (typicalUseW[d]! > 0 ? capacityWh[d]! / typicalUseW[d]! : Infinity);
  return Array.from(devices.keys())
    .filter((d) => devices[d]!.mustHave)
    .sort((a, b) => (hoursOf(a) === hoursOf(b) ? a - b : hoursOf(a) - hoursOf(b)))
    .map((d) => devices[d]!.label);
}

function niceToHaveSteps({ devices, rations, bankCount }: Network): readonly string[] {
  const names = devices.filter(({ mustHave }) => !mustHave).map(({ label }) => label);
  if (names.length === 0) return [];
  const waits =
    rations && bankCount > 0 ? '. While the must-haves are short, they wait until the banks are served' : '';
  return [`Nice-to-haves come after them: ${inList(namesOf(names))}${waits}.`];
}

/** What to plug in at a campsite post, where the tour has one. */
export function postSteps({ rules, tour, ready }: RulesGround): readonly string[] {
  const posts = tour.legs.filter(hasPost).map(({ nights }) => nights.postOutlets);
  if (posts.length === 0) return [];
  const outlets = `${outletWords(posts)} there`;
  if (rules.atPost === 'devices-too')
    return [`At a campsite post do the same as at a wall; reckoned with ${outlets}.`];
  return [
    ready.network.bankCount === 0
      ? 'At a campsite post this scenario plugs in banks only, and it has none: nothing is filled there.'
      : `At a campsite post plug in banks only, reckoned with ${outlets}; the devices stay in the tent and are filled from a bank.`,
  ];
}

function hasPost({ nights, days }: Leg): boolean {
  return Array.from({ length: days }, (_, night) => nightOf(nights, night)).includes('electric-post');
}

function outletWords(outlets: readonly number[]): string {
  const [least, most] = [Math.min(...outlets), Math.max(...outlets)];
  const count = least === most ? String(most) : `${least} to ${most}`;
  return `${count} ${most === 1 ? 'outlet' : 'outlets'}`;
}
