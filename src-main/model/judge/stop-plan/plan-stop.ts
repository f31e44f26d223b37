import { gridsOf, type Grid } from './grid.ts';
import { lanesOf, type Lane } from './lanes.ts';
import { problemOf, storedNow, type StopProblem } from './problem.ts';
import { plugsOf } from './plugs.ts';
import { search } from './search.ts';
import { servedBy, type Served } from './served.ts';
import { inOrder, type StopSituation } from './situation.ts';
import { followSlots, meritOf, tidied, type Slot } from './tidy.ts';
import { worthOf, type Worth } from './worth.ts';

/** What to plug in when. Stores and chargers are named by their places in the lists of `situation`. */
export interface PlannedStop {
  /** The stop with its lists in the order of service. */
  readonly situation: StopSituation;
  readonly lanes: readonly Lane[];
  /** By store, at the end of the stop, Wh. */
  readonly afterWh: readonly number[];
  readonly worth: Worth;
  readonly served: readonly Served[];
  /** Plugs of this plan are moved after whole slots of this length, min. */
  readonly slotMinutes: number;
  /** No plan that moves plugs after whole slots of this length is better, min. */
  readonly bestOfMinutes: number;
  /** The finest slots this stop is planned on, min: less than `bestOfMinutes` where there were too many plans to try. */
  readonly finestMinutes: number;
  /** Stores that could not be considered, for there were too many ways to plug them in. */
  readonly leftOut: readonly number[];
  /** Not every way to plug in could be considered: `bestOfMinutes` holds for those that were. */
  readonly isNarrowed: boolean;
}

/**
 * The plan that leaves the most of use until the next wall: must-haves' need served first, then nice-to-haves', then most
 * stored, then few plugs moved, then must-haves early (see `worth.ts` and `tidy.ts`).
 *
 * Exact on a grid of slots, the finest on which all plans can be told apart from the best; where there are too many, the
 * best met on a finer grid is taken if it is better still.
 *
 * @param stop minutes above 0; a stop with nothing to plug in gets a plan without lanes
 */
export function planStop(stop: StopSituation): PlannedStop {
  const situation = inOrder(stop);
  const { stores, chargers } = situation;
  const tries = triesOn(situation);
  const { grid, problem, slots } = tries.reduce((best, next) => (next.merit > best.merit ? next : best));
  const afterWh = followSlots(problem, slots).at(-1) ?? storedNow(stores);
  return {
    situation,
    lanes: lanesOf(problem, chargers, grid, slots),
    afterWh,
    worth: worthOf(stores, afterWh),
    served: servedBy(stores, afterWh),
    slotMinutes: grid.slotMinutes,
    bestOfMinutes: tries.at(-1)!.grid.slotMinutes,
    finestMinutes: gridsOf(stop.minutes)[0]!.slotMinutes,
    leftOut: problem.plugs.leftOut,
    isNarrowed: problem.plugs.isNarrowed,
  };
}

/** A plan on one grid. */
interface Tried {
  readonly grid: Grid;
  readonly problem: StopProblem;
  readonly slots: readonly Slot[];
  readonly merit: number;
}

/** With more plugs than riders have, a stop is cut into no more slots than this (our choice). */
const mostSlotsOfMany = 8;

function coarse(grids: readonly Grid[]): readonly Grid[] {
  return grids.filter(({ marks }) => marks.length - 1 <= mostSlotsOfMany);
}

/** Searches grid after grid, the finest first, until one is searched to the end. */
function triesOn(situation: StopSituation): readonly Tried[] {
  const tries: Tried[] = [];
  const plugs = plugsOf(situation);
  const grids = gridsOf(situation.minutes);
  for (const grid of plugs.isNarrowed ? coarse(grids) : grids) {
    const problem = problemOf(situation.stores, plugs, grid);
    const { modes, isBest } = search(problem);
    const slots = tidied(problem, modes);
    tries.push({ grid, problem, slots, merit: meritOf(problem, slots) });
    if (isBest) break;
  }
  return tries;
}
