import { ranks, type Rank, type StopStore } from './situation.ts';

/** How far a device's need until the next wall is met, Wh at its batteries. */
export interface Served {
  /** Place in the situation's list. */
  readonly store: number;
  readonly needWh: number;
  readonly ownWh: number;
  readonly fromBanksWh: number;
  readonly shortWh: number;
}

/**
 * How each device fares until the next wall with what is stored: from its own batteries first, then from the banks, which
 * serve must-haves before nice-to-haves and equals alike, each the same share of what it lacks.
 *
 * @param storedWh by store
 */
export function servedBy(stores: readonly StopStore[], storedWh: readonly number[]): readonly Served[] {
  let banksWh = 0;
  stores.forEach(({ rank, usableShare }, place) => {
    if (rank === 'bank') banksWh += storedWh[place]! * usableShare;
  });
  return ranks.flatMap((rank) => {
    const own = rank === 'bank' ? [] : ownOf(stores, storedWh, rank);
    const lackWh = own.reduce((sum, { needWh, ownWh }) => sum + needWh - ownWh, 0);
    const share = lackWh > 0 ? Math.min(1, banksWh / lackWh) : 0;
    banksWh -= lackWh * share;
    return own.map((each) => {
      const fromBanksWh = (each.needWh - each.ownWh) * share;
      return { ...each, fromBanksWh, shortWh: each.needWh - each.ownWh - fromBanksWh };
    });
  });
}

function ownOf(stores: readonly StopStore[], storedWh: readonly number[], rank: Rank) {
  return stores.flatMap(({ rank: of, needWh }, store) =>
    of === rank ? [{ store, needWh, ownWh: Math.min(needWh, storedWh[store]!) }] : [],
  );
}
