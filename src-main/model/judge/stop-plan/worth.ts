import type { Rank, StopStore } from './situation.ts';

/** What a rider has from the stores at the end of a stop, Wh at the devices' batteries. */
export interface Worth {
  /** Of the must-haves' need until the next wall: from their own batteries, and from banks. */
  readonly mustHaveWh: number;
  /** Of the nice-to-haves' need, with what the must-haves leave of the banks. */
  readonly niceToHaveWh: number;
  /** All that is stored, as far as it ends in a device's battery. */
  readonly usableWh: number;
}

/*
 * A Wh of a must-have's need outweighs this many Wh of nice-to-haves' need, and one of those as many merely stored. More
 * than the strongest plug gives for one Wh of the weakest that is in use, so the first comes first; yet nobody
 * sacrifices an hour of charging for the last milliwatt-hour.
 */
const outweighs = 100;

/** Weights of a Wh, by what it is good for. */
export const weightOf: Readonly<Record<Exclude<Rank, 'bank'> | 'stored', number>> = {
  'must-have': outweighs * outweighs,
  'nice-to-have': outweighs,
  stored: 1,
};

/** One figure for what plans are compared by. */
export function weighed({ mustHaveWh, niceToHaveWh, usableWh }: Worth): number {
  return (
    weightOf['must-have'] * mustHaveWh + weightOf['nice-to-have'] * niceToHaveWh + weightOf.stored * usableWh
  );
}

/** How much of its need a device has in its own batteries, Wh. */
function ownWh({ needWh }: StopStore, storedWh: number): number {
  return Math.min(needWh, storedWh);
}

/** Need and what of it own batteries serve, Wh, of all devices of a rank. */
function served(stores: readonly StopStore[], storedWh: ArrayLike<number>, rank: Rank) {
  let [own, need] = [0, 0];
  stores.forEach((store, index) => {
    if (store.rank !== rank) return;
    own += ownWh(store, storedWh[index]!);
    need += store.needWh;
  });
  return { own, short: need - own };
}

/** @param storedWh by store, in their order */
export function worthOf(stores: readonly StopStore[], storedWh: ArrayLike<number>): Worth {
  let [usableWh, banksWh] = [0, 0];
  stores.forEach(({ rank, usableShare }, index) => {
    const usable = storedWh[index]! * usableShare;
    usableWh += usable;
    if (rank === 'bank') banksWh += usable;
  });
  const must = served(stores, storedWh, 'must-have');
  const nice = served(stores, storedWh, 'nice-to-have');
  const forMust = Math.min(must.short, banksWh);
  const forNice = Math.min(nice.short, banksWh - forMust);
  return { mustHaveWh: must.own + forMust, niceToHaveWh: nice.own + forNice, usableWh };
}
