import { sinkLimitW } from '../../storage/port-power.ts';
import type { Demand, Prices } from './bound.ts';
import type { StopProblem } from './problem.ts';
import type { StopStore } from './situation.ts';
import { weightOf } from './worth.ts';

/** A port a store may hang on. */
interface Option {
  readonly portClass: number;
  readonly anHour: number;
  /** By slot. */
  readonly charging: readonly ((level: number) => number)[];
}

/** Where a store stops taking at these prices, and what its contents are worth. */
interface Target {
  readonly stopsAtWh: number;
  readonly costAWh: number;
  /** At the end, by Wh stored. */
  worth(storedWh: number): number;
}

function targetOf(store: StopStore, { wallAWh, bankAWh }: Prices): Target {
  const costAWh = wallAWh / store.efficiencyIn;
  const { enoughWh, shortSlope, fullSlope } = slopesOf(store, bankAWh);
  const stopsAtWh = costAWh >= shortSlope ? 0 : costAWh >= fullSlope ? enoughWh : store.capacityWh;
  const atEnough = worthOfEnough(store, bankAWh);
  const worth = (storedWh: number): number =>
    atEnough + (storedWh - enoughWh) * (storedWh < enoughWh ? shortSlope : fullSlope);
  return { stopsAtWh, costAWh, worth };
}

/** A store tries no more ports than this: a few that are together as strong and as cheap as all (measured). */
const mostOptions = 3;

interface Offer {
  readonly portClass: number;
  readonly powerW: number;
  readonly anHour: number;
}

/** Where a store may hang: the ports of which no other is as strong and as cheap, the strongest first. */
function optionsOf(place: number, problem: StopProblem, { portAnHour }: Prices): readonly Option[] {
  const { plugs, levels, hours } = problem;
  const limitW = sinkLimitW(problem.stores[place]!.input);
  const offers = plugs.classes.map(({ charger, strengthW }, portClass) => ({
    portClass,
    powerW: Math.min(strengthW, limitW, plugs.totalsW[charger]!),
    anHour: portAnHour[portClass]!,
  }));
  return fewOf(offers).map(({ portClass, powerW, anHour }) => ({
    portClass,
    anHour,
    charging: hours.map((each) => levels[place]!.charging(powerW, each)),
  }));
}

/** Offers beyond the most are joined with the next weaker: with the power of the one and the price of the other. */
function fewOf(offers: readonly Offer[]): readonly Offer[] {
  const sorted = [...offers].sort((a, b) => b.powerW - a.powerW || a.anHour - b.anHour);
  const cheaper = sorted.filter(({ anHour }, place) =>
    sorted.slice(0, place).every((stronger) => anHour < stronger.anHour),
  );
  const joined = Math.max(0, cheaper.length - mostOptions);
  return cheaper
    .slice(joined)
    .map((offer, place) => (place === 0 ? { ...offer, powerW: cheaper[0]!.powerW } : offer));
}

/** What a Wh more is worth until the store holds enough, and after. A bank never holds enough. */
function slopesOf(store: StopStore, bankAWh: number) {
  const stored = store.usableShare * weightOf.stored;
  if (store.rank === 'bank') {
    const slope = stored + store.usableShare * bankAWh;
    return { enoughWh: store.capacityWh, shortSlope: slope, fullSlope: slope };
  }
  const shortSlope = stored + Math.min(weightOf[store.rank], bankAWh);
  return { enoughWh: Math.min(store.needWh, store.capacityWh), shortSlope, fullSlope: stored };
}

/** What a store is worth that holds enough, with bank energy at a price for what is lacking even then. */
function worthOfEnough({ rank, capacityWh, needWh, usableShare }: StopStore, bankAWh: number): number {
  if (rank === 'bank') return capacityWh * usableShare * (weightOf.stored + bankAWh);
  const enoughWh = Math.min(needWh, capacityWh);
  const lacking = Math.min(weightOf[rank], bankAWh) * (needWh - enoughWh);
  return weightOf[rank] * needWh - lacking + enoughWh * usableShare * weightOf.stored;
}

/** What one store makes of the plugs, with all ports to choose from. */
export interface Alone {
  /** From a level and a slot on, less what it pays. */
  makes(level: number, slot: number): number;
  /** Adds what it wants from the first slot on. */
  addWanted(level: number, wanted: Demand): void;
}

/** A store alone in the world of a problem, at prices. */
export function aloneAt(problem: StopProblem, place: number, prices: Prices): Alone {
  const { hours } = problem;
  const levels = problem.levels[place]!;
  const { wh } = levels;
  const store = problem.stores[place]!;
  const options = optionsOf(place, problem, prices);
  const target = targetOf(store, prices);
  const known: number[][] = hours.concat(0).map(() => []);
  const reached = (level: number): number => Math.min(wh[level]!, target.stopsAtWh);
  const profit = (level: number, slot: number): number => {
    const table = known[slot]!;
    const before = table[level];
    if (before !== undefined) return before;
    const ends = reached(level);
    let best = target.worth(ends) - target.costAWh * ends;
    if (slot < hours.length && wh[level]! < target.stopsAtWh) {
      best = profit(level, slot + 1);
      for (const option of options) best = Math.max(best, hung(level, slot, option));
    }
    table[level] = best;
    return best;
  };
  const hung = (level: number, slot: number, { charging, anHour }: Option): number => {
    const next = charging[slot]!(level);
    return next === level ? -Infinity : profit(next, slot + 1) - anHour * hours[slot]!;
  };
  return {
    makes: (level, slot) =>
      wh[level]! < target.stopsAtWh
        ? profit(level, slot) + target.costAWh * wh[level]!
        : target.worth(wh[level]!),
    addWanted: (from, wanted) => {
      let level = from;
      for (let slot = 0; slot < hours.length && wh[level]! < target.stopsAtWh; slot += 1) {
        const best = profit(level, slot);
        if (profit(level, slot + 1) === best) continue;
        const option = options.find((each) => hung(level, slot, each) === best)!;
        wanted.portHours[option.portClass]! += hours[slot]!;
        level = option.charging[slot]!(level);
      }
      const endsWh = level === from ? wh[from]! : reached(level);
      wanted.wallWh += (endsWh - wh[from]!) / store.efficiencyIn;
      if (store.rank === 'bank') wanted.bankWh -= endsWh * store.usableShare;
      else if (weightOf[store.rank] > prices.bankAWh) wanted.bankWh += Math.max(0, store.needWh - endsWh);
    },
  };
}
