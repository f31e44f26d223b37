import { sinkLimitW } from '../../storage/port-power.ts';
import type { StopStore } from './situation.ts';

/** Ports of one charger that give the same. */
export interface PortClass {
  readonly charger: number;
  readonly strengthW: number;
  readonly count: number;
}

/** A store on a port. */
export interface Hang {
  readonly store: number;
  readonly portClass: number;
  /** The least of what port, cable and store pass, W. */
  readonly linkW: number;
}

/** What is to be plugged in, and where it may be. */
export interface Wanted {
  readonly stores: readonly StopStore[];
  readonly classes: readonly PortClass[];
  /** By charger: through all its ports, W. */
  readonly totalsW: readonly number[];
  readonly outlets: number;
  /** Places of the stores that take anything, in the order of service. */
  readonly hungry: readonly number[];
  /** Free ports that each store tries. */
  readonly ports: number;
}

/** So many ways to plug in are looked at, and so many where each store tries a few ports only (our choice). */
const mostWays = 40_000;
const mostNarrowWays = 10_000;

/** Every way to hang stores on ports to which nothing can be added for nothing; null when there are too many. */
export function waysOf(wanted: Wanted): readonly (readonly Hang[])[] | null {
  const { classes, hungry, outlets } = wanted;
  const ways: (readonly Hang[])[] = [];
  const left = classes.map(({ count }) => count);
  const hangsBy = new Map(hungry.map((store) => [store, hangsFor(store, wanted)]));
  const most = wanted.ports < Infinity ? mostNarrowWays : mostWays;
  let looked = 0;
  const hang = (at: number, hangs: readonly Hang[]): void => {
    looked += 1;
    if (looked > most) return;
    const store = hungry[at];
    if (store === undefined) {
      if (hangs.length > 0 && !canAdd(wanted, left, hangs)) ways.push(hangs);
      return;
    }
    const options = hangsBy
      .get(store)!
      .filter(
        (option) => left[option.portClass]! > 0 && chargersIn([...hangs, option], classes).size <= outlets,
      );
    for (const option of options.slice(0, wanted.ports)) {
      left[option.portClass]! -= 1;
      hang(at + 1, [...hangs, option]);
      left[option.portClass]! += 1;
    }
    hang(at + 1, hangs);
  };
  hang(0, []);
  return looked > most ? null : ways;
}

/** A store on each class of ports, the strongest link first and among equals the weakest port. */
function hangsFor(store: number, { stores, classes }: Wanted): readonly Hang[] {
  const limitW = sinkLimitW(stores[store]!.input);
  const strengthOf = ({ portClass }: Hang): number => classes[portClass]!.strengthW;
  return classes
    .map(({ strengthW }, portClass) => ({ store, portClass, linkW: Math.min(strengthW, limitW) }))
    .sort((a, b) => b.linkW - a.linkW || strengthOf(a) - strengthOf(b));
}

export function chargersIn(hangs: readonly Hang[], classes: readonly PortClass[]): ReadonlySet<number> {
  return new Set(hangs.map(({ portClass }) => classes[portClass]!.charger));
}

/** Whether another store could hang on a free port and take nothing from those that hang already. */
function canAdd(wanted: Wanted, left: readonly number[], hangs: readonly Hang[]): boolean {
  const { stores, classes, totalsW, outlets, hungry } = wanted;
  const plugged = chargersIn(hangs, classes);
  return classes.some(({ charger, strengthW }, portClass) => {
    if (left[portClass] === 0 || (!plugged.has(charger) && plugged.size >= outlets)) return false;
    const beside = hangs.filter((hang) => classes[hang.portClass]!.charger === charger);
    const askedW = beside.reduce((sum, { linkW }) => sum + linkW, 0);
    return hungry.some((store) => {
      if (hangs.some((hang) => hang.store === store)) return false;
      const linkW = Math.min(strengthW, sinkLimitW(stores[store]!.input));
      return askedW + linkW <= totalsW[charger]! || beside.every((hang) => hang.store < store);
    });
  });
}
