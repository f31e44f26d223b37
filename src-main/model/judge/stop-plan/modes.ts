import { chargersIn, waysOf, type Hang, type Wanted } from './ways.ts';

/** What hangs on one charger, in the order in which it shares its total. */
export interface Share {
  readonly totalW: number;
  readonly hangs: readonly Hang[];
}

/** One way to have everything plugged in. */
export interface Mode {
  /** Hangs that get all of their link, whatever else is plugged in. */
  readonly free: readonly Hang[];
  /** Chargers that can't give all they are asked for. */
  readonly shared: readonly Share[];
  /** Ways to plug in that give every store the same. */
  readonly ways: readonly (readonly Hang[])[];
}

/** More modes than this are not searched, nor more than this compared with each other (our choice). */
const mostModes = 250;
const mostModesCompared = 2 * mostModes;

/** Every mode that is worth a look; null when there are too many. */
export function modesFor(wanted: Wanted): readonly Mode[] | null {
  const ways = waysOf(wanted);
  const modes = ways === null ? null : modesOf(ways, wanted);
  return modes === null || modes.length > mostModes ? null : modes;
}

/** Ways that give every store the same are one mode; a mode that gives some store less and none more is dropped. */
function modesOf(ways: readonly (readonly Hang[])[], wanted: Wanted): readonly Mode[] | null {
  const byGift = new Map<string, { readonly mode: Omit<Mode, 'ways'>; readonly ways: (readonly Hang[])[] }>();
  for (const hangs of ways) {
    const mode = parted(hangs, wanted);
    const gift = giftOf(mode);
    const known = byGift.get(gift);
    if (known === undefined) byGift.set(gift, { mode, ways: [hangs] });
    else known.ways.push(hangs);
  }
  if (byGift.size > mostModesCompared) return null;
  const modes = [...byGift.values()].map(({ mode, ways: same }) => ({ ...mode, ways: same }));
  return modes.filter((mode) => !modes.some((other) => other !== mode && givesMore(other, mode)));
}

function parted(hangs: readonly Hang[], { classes, totalsW }: Wanted): Omit<Mode, 'ways'> {
  const shares = [...chargersIn(hangs, classes)].map((charger) => ({
    totalW: totalsW[charger]!,
    hangs: hangs.filter(({ portClass }) => classes[portClass]!.charger === charger),
  }));
  const isShort = ({ totalW, hangs: on }: Share): boolean =>
    on.reduce((sum, { linkW }) => sum + linkW, 0) > totalW;
  return {
    free: shares.filter((share) => !isShort(share)).flatMap((share) => share.hangs),
    shared: shares.filter(isShort),
  };
}

function giftOf({ free, shared }: Omit<Mode, 'ways'>): string {
  const words = (hangs: readonly Hang[]): string =>
    hangs
      .map(({ store, linkW }) => `${store}:${linkW}`)
      .sort()
      .join(' ');
  return [words(free), ...shared.map(({ totalW, hangs }) => `${totalW}=${words(hangs)}`).sort()].join(' | ');
}

function givesMore(other: Mode, mode: Mode): boolean {
  if (other.shared.length > 0 || mode.shared.length > 0) return false;
  return mode.free.every(({ store, linkW }) =>
    other.free.some((hang) => hang.store === store && hang.linkW >= linkW),
  );
}
