import type { Item, ItemOf } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import { layTour, withKit, type LaidTour, type TourCourse } from '../../model/flow/course.ts';
import type { Draws } from '../../model/flow/histories/draws.ts';
import type { Network } from '../../model/flow/network.ts';
import {
  mustHaveDrawWh,
  panelWhByHour,
  type PooledHistory,
} from '../../model/judge/kit-search/pooled-supply.ts';
import { ofKind, type CarriedItem } from '../assemble/kit.ts';
import type { ComparedTour } from '../compared-tour.ts';
import type { ComparisonGround } from '../ground.ts';
import { airByStep, hubPlugW, networkOf, panelsOf, ridesOf } from '../simulate-scenario.ts';

/** What all kits of a search are laid out from; plain data. */
export interface KitGround {
  /** Equal ids mean the same search. */
  readonly searchId: string;
  readonly ground: ComparisonGround;
  readonly scenario: Pick<Scenario, 'placement' | 'rules'>;
  /** The items that the counts of a kit stand for, in order. */
  readonly itemIds: readonly string[];
  /** The lowest rung that the rider takes. */
  readonly leastRung: number;
  /** Every hub is ridden with this mass aboard, so that an item more takes nothing from it, g. */
  readonly riddenG: number;
}

/** A kit ready to be walked. */
export interface LaidKit {
  readonly network: Network;
  readonly course: TourCourse;
  readonly histories: readonly Draws[];
  /** By history, by the hour. */
  readonly pooled: readonly PooledHistory[];
  /** Kits that live on the same sources fail in the same histories, as a rule. */
  readonly livesOn: string;
}

/** Lays out kit after kit; what many share is made once. */
export interface KitShop {
  readonly confidence: number;
  lay(counts: readonly number[]): LaidKit;
}

/** Sums of panels kept: each takes the power of all histories. */
const panelSetsKept = 16;

export function kitShop({ ground, scenario, itemIds, riddenG }: KitGround, tour: ComparedTour): KitShop {
  const byId = new Map(ground.items.map((item) => [item.id, item]));
  const items = itemIds.map((id) => byId.get(id)!);
  const panels = panelSets(scenario, tour);
  const hubs = kept((lines: readonly CarriedItem[]) => hubPlugW(ridesOf(tour, lines, riddenG)), keyOf);
  const tours = new Map<boolean, LaidTour>();
  const around = { airDegC: airByStep(tour), cellsSleep: scenario.rules.cellsSleep };
  const laidTour = (network: Network): LaidTour => {
    const laid = tours.get(network.portCount > 0) ?? layTour(network, tour.timeline, around);
    tours.set(network.portCount > 0, laid);
    return laid;
  };
  let drawWh: readonly Float32Array[] | null = null;
  return {
    confidence: ground.settings.risk.confidence,
    lay: (counts) => {
      const lines = items.flatMap((item, at) => (counts[at]! > 0 ? [{ item, carried: counts[at]! }] : []));
      const network = networkOf(scenario, tour, lines);
      const panelLines = ofKind(lines, 'panel');
      const hubLines = [...ofKind(lines, 'generator-hub'), ...ofKind(lines, 'converter')];
      const { histories, panelWh } = panels(panelLines);
      const course = withKit(laidTour(network), network, tour.timeline, hubs(hubLines));
      // Of devices and drawn use alone: the same for every kit.
      const mustHaves = (drawWh ??= histories.map((draws) => mustHaveDrawWh(network, course, draws)));
      const pooled = histories.map(({ outletIsFree }, history) => ({
        ...{ outletIsFree, panelWh: panelWh[history]!, drawWh: mustHaves[history]! },
      }));
      return {
        ...{ network, course, histories, pooled },
        livesOn: `${panelLines.length > 0} ${hubLines.length > 1} ${network.portCount > 0}`,
      };
    },
  };
}

function keyOf(lines: readonly CarriedItem[]): string {
  return lines.map(({ item, carried }) => `${item.id}x${carried}`).join();
}

function kept<I, O>(make: (input: I) => O, keyOfInput: (input: I) => string): (input: I) => O {
  const known = new Map<string, O>();
  return (input) => {
    const key = keyOfInput(input);
    const made = known.get(key) ?? make(input);
    known.set(key, made);
    return made;
  };
}

type PanelLine = CarriedItem<ItemOf<'panel'>>;

/** What the histories bring with a set of panels. */
interface PanelSet {
  readonly histories: readonly Draws[];
  /** By history, by the hour. */
  readonly panelWh: readonly Float32Array[];
}

/** The draws of a set of panels: their powers add up. */
function panelSets(
  scenario: Pick<Scenario, 'placement'>,
  tour: ComparedTour,
): (lines: readonly PanelLine[]) => PanelSet {
  const single = kept(
    (item: Item) => panelsOf(scenario, tour, [{ item, carried: 1 }]).byHistory,
    (item) => item.id,
  );
  const none = panelsOf(scenario, tour, []).byHistory;
  const sets = new Map<string, PanelSet>();
  return (lines) => {
    const key = keyOf(lines);
    const known = sets.get(key) ?? panelSet(tour, sumOf(lines, single, none));
    sets.delete(key);
    sets.set(key, known);
    const [oldest] = sets.keys();
    if (sets.size > panelSetsKept && oldest !== undefined) sets.delete(oldest);
    return known;
  };
}

function sumOf(
  lines: readonly PanelLine[],
  single: (item: Item) => readonly Float32Array[],
  none: readonly Float32Array[],
): readonly Float32Array[] {
  if (lines.length === 0) return none;
  const parts = lines.map(({ item, carried }) => ({ byHistory: single(item), carried }));
  return none.map((dark, history) => {
    const sum = new Float32Array(dark.length);
    for (const { byHistory, carried } of parts) {
      const panelW = byHistory[history]!;
      for (let step = 0; step < sum.length; step += 1) sum[step]! += panelW[step]! * carried;
    }
    return sum;
  });
}

function panelSet(tour: ComparedTour, byHistory: readonly Float32Array[]): PanelSet {
  const histories = byHistory.map((panelW, history) => ({
    panelW,
    outletIsFree: tour.outletIsFree[history]!,
    useScale: tour.useScale[history]!,
  }));
  return { histories, panelWh: histories.map((draws) => panelWhByHour(tour.timeline, draws)) };
}
