import { sourceLimitW } from '../../storage/port-power.ts';
import { fullWh } from './charge.ts';
import { modesFor, type Mode } from './modes.ts';
import type { StopCharger, StopSituation } from './situation.ts';
import type { PortClass } from './ways.ts';

/** A kit beside a wall. */
export interface Plugs {
  readonly classes: readonly PortClass[];
  readonly totalsW: readonly number[];
  /** All that can be plugged in at once, W. */
  readonly mostW: number;
  readonly modes: readonly Mode[];
  /** Places of stores that a plan could not consider, the least needed ones. */
  readonly leftOut: readonly number[];
  /** There were too many ways to plug in: not all of them are in the modes. */
  readonly isNarrowed: boolean;
}

/** Where there are too many ways, each store tries only the best ports that are free (our choice). */
const portsTried = [Infinity, 2, 1] as const;

/** Ports of a charger by what they give, the strongest first. */
function classesOf({ outputs }: StopCharger, charger: number): readonly PortClass[] {
  const strengths = outputs.map(sourceLimitW);
  const distinct = [...new Set(strengths)].sort((a, b) => b - a);
  return distinct.map((strengthW) => ({
    charger,
    strengthW,
    count: strengths.filter((each) => each === strengthW).length,
  }));
}

/** What a charger gives through all its ports, W. */
function totalOf({ totalW, outputs }: StopCharger): number {
  return Math.min(
    totalW,
    outputs.reduce((sum, port) => sum + sourceLimitW(port), 0),
  );
}

/** Every way to plug in that is worth a look. The lists of the situation are in the order of service. */
export function plugsOf({ stores, chargers, outlets }: StopSituation): Plugs {
  const classes = chargers.flatMap(classesOf);
  const totalsW = chargers.map(totalOf);
  const strongest = [...totalsW].sort((a, b) => b - a).slice(0, outlets);
  const mostW = strongest.reduce((sum, totalW) => sum + totalW, 0);
  const hungry = stores.flatMap((store, place) => (store.storedWh < fullWh(store) ? [place] : []));
  const wanted = { stores, classes, totalsW, outlets };
  for (const [considered, ports] of narrower(hungry.length)) {
    const modes = modesFor({ ...wanted, hungry: hungry.slice(0, considered), ports });
    if (modes === null) continue;
    const leftOut = hungry.slice(considered);
    return { classes, totalsW, mostW, modes, leftOut, isNarrowed: ports < Infinity };
  }
  return { classes, totalsW, mostW, modes: [], leftOut: [], isNarrowed: false };
}

/** How many stores to consider and how many ports to try for each: all, and ever fewer. */
function narrower(stores: number): readonly (readonly [number, number])[] {
  const fewer = Array.from({ length: stores }, (_, less) => [stores - 1 - less, 1] as const);
  return [...portsTried.map((ports) => [stores, ports] as const), ...fewer];
}
