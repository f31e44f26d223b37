import { shareOfLights } from '../../../shared-types/stop-plan.ts';
import { rides } from '../../model/storage/cell-warmth.ts';
import { fullShare } from '../../model/storage/taper.ts';
import { bankModels, ofKind } from '../assemble/kit.ts';
import { fullAtPlugWh } from './bank-lights.ts';
import type { RulesGround } from './rules-ground.ts';
import type { Stretch } from './stretch.ts';
import { throughBank, type BankLine } from './through-bank.ts';

/** How a stretch is to be started, so that the must-haves' planned use is covered on mean days. */
export type StretchStart =
  /** With the must-haves full; banks are not needed. */
  | { readonly as: 'must-haves' }
  /** And with so many lights lit on each bank. */
  | { readonly as: 'lights'; readonly banks: readonly LitBank[] }
  /** And with all banks full. */
  | { readonly as: 'all-full' }
  /** Even that falls short, by so much at the plug. */
  | { readonly as: 'short'; readonly lackingWh: number };

export interface LitBank {
  readonly bank: string;
  readonly pieces: number;
  readonly lit: number;
  readonly of: number;
}

type StartGround = Pick<RulesGround, 'rules' | 'lines' | 'ready'>;

/** The least to start a stretch with: lights count for the low end of what they mean, and the cold of the tour is taken off. */
export function stretchStart(stretch: Stretch, ground: StartGround): StretchStart {
  const lackingWh =
    lackingAtPlugWh(stretch, ground) - stretch.sourcesWh * throughBank(ground.rules, ground.lines);
  if (lackingWh <= 0) return { as: 'must-haves' };
  const banks = ofKind(ground.lines, 'bank');
  const missingWh = lackingWh - inReachWh(banks, fullShare, ground);
  if (missingWh > 0) return { as: 'short', lackingWh: missingWh };
  const lit = leastLights(banks, lackingWh, ground);
  return lit === null ? { as: 'all-full' } : { as: 'lights', banks: lit };
}

/** What the must-haves lack beyond their own full batteries: none can have what another holds. */
function lackingAtPlugWh({ deviceWh }: Stretch, { ready }: StartGround): number {
  const { network, course } = ready;
  return deviceWh.reduce((sum, useWh, device) => {
    if (network.mustHave[device] === 0) return sum;
    const coldShare = course.mostUnreachableShare[network.ridesWhere[device]!]!;
    const ownWh = network.capacityWh[device]! * Math.max(0, fullShare - coldShare);
    return sum + Math.max(0, useWh - ownWh / network.efficiencyIn[device]!);
  }, 0);
}

/** What banks give at their plugs when so full, Wh. */
function inReachWh(banks: readonly BankLine[], share: number, ground: StartGround): number {
  return banks.reduce((sum, line) => {
    const inReach = Math.max(0, share - keptByCold(line, ground));
    return sum + line.carried * fullAtPlugWh(line) * inReach;
  }, 0);
}

/** Share of its capacity that a bank keeps back in the coldest step of the tour, 0..1. */
export function keptByCold(line: BankLine, { ready }: Pick<StartGround, 'ready'>): number {
  return ready.course.mostUnreachableShare[rides.indexOf(bankModels([line])[0]!.ridesWhere)]!;
}

/** The least number of lights on every bank that covers what is lacking, all banks equally full; null where no number does. */
function leastLights(
  banks: readonly BankLine[],
  lackingWh: number,
  ground: StartGround,
): readonly LitBank[] | null {
  const shares = banks.flatMap(({ item }) => lowEnds(item.lights)).sort((a, b) => a - b);
  const covers = (share: number): boolean => inReachWh(banks, share, ground) >= lackingWh;
  const share = shares.find(covers);
  if (share === undefined) return null;
  const lit = banks.map((line) => litFrom(line, share));
  return lit.every((bank) => bank !== null) ? lit : null;
}

/** By lights lit, from one up: the share that is surely there. */
function lowEnds(lights: number): readonly number[] {
  return Array.from({ length: lights }, (_, dark) => shareOfLights(dark + 1, lights).low);
}

function litFrom({ item, carried }: BankLine, share: number): LitBank | null {
  const dark = lowEnds(item.lights).findIndex((low) => low >= share);
  return dark < 0 ? null : { bank: item.label, pieces: carried, lit: dark + 1, of: item.lights };
}
