import type { Bound } from './bound.ts';
import type { Mode } from './modes.ts';
import { tightBounds } from './prices.ts';
import { storedAt, storedNow, type StopProblem } from './problem.ts';
import { weighed, weightOf, worthOf } from './worth.ts';

/** A plan that is at most this much short of the best counts as the best, Wh stored: less than figures show. */
const negligibleWh = 0.1;
/** States looked at before the search gives up (our choice: some tenths of a second). */
const mostTries = 60_000;

interface Node {
  readonly state: readonly number[];
  readonly before: Node | null;
  readonly mode: number;
}

export interface Found {
  /** The mode of each slot. */
  readonly modes: readonly Mode[];
  /** Weighed. */
  readonly worth: number;
  /** Nothing on this grid is better; false where the search gave up and this is only the best it met. */
  readonly isBest: boolean;
}

/**
 * The best way through the slots: layer by layer, the states that slots lead to; those that even their bound can't lift
 * above the best plan known are dropped, and from each layer the most promising is followed to its end.
 */
export function search(problem: StopProblem): Found {
  if (problem.plugs.modes.length === 0) return foundIn(problem, nothingDone(problem), true);
  const bounds = tightBounds(problem);
  const root: Node = { state: problem.start, before: null, mode: -1 };
  let best = followed(problem, bounds, root, 0);
  let layer: readonly Node[] = [root];
  let triesLeft = mostTries;
  for (let slot = 0; slot < problem.hours.length && layer.length > 0; slot += 1) {
    triesLeft -= layer.length * problem.plugs.modes.length;
    if (triesLeft < 0) return foundIn(problem, best, false);
    const { nodes, promising } = nextLayer(problem, bounds, layer, slot, best.worth);
    if (promising !== null) {
      const reached = followed(problem, bounds, promising, slot + 1);
      if (reached.worth > best.worth) best = reached;
    }
    layer = nodes;
  }
  return foundIn(problem, best, true);
}

interface Reached {
  readonly modes: readonly number[];
  readonly worth: number;
}

function nothingDone({ stores }: StopProblem): Reached {
  return { modes: [], worth: weighed(worthOf(stores, storedNow(stores))) };
}

function foundIn({ plugs }: StopProblem, { modes, worth }: Reached, isBest: boolean): Found {
  return { modes: modes.map((mode) => plugs.modes[mode]!), worth, isBest };
}

/** The states after a slot that may still beat the best plan known, and the most promising of them. */
function nextLayer(
  problem: StopProblem,
  bounds: readonly Bound[],
  layer: readonly Node[],
  slot: number,
  bestWorth: number,
): { readonly nodes: readonly Node[]; readonly promising: Node | null } {
  const least = bestWorth + negligibleWh * weightOf.stored;
  const next = new Map<string, Node>();
  let [promising, highest]: [Node | null, number] = [null, least];
  for (const before of layer)
    for (let mode = 0; mode < problem.plugs.modes.length; mode += 1) {
      const state = stepped(problem, before.state, mode, slot);
      const limit = limitOf(bounds, state, slot + 1, least);
      if (limit <= least) continue;
      const node = { state, before, mode };
      const key = state.join();
      if (!next.has(key)) next.set(key, node);
      if (limit > highest) [promising, highest] = [node, limit];
    }
  return { nodes: [...next.values()], promising };
}

/** The least of the bounds; stops at the first that rules the state out. */
function limitOf(bounds: readonly Bound[], state: readonly number[], slot: number, least: number): number {
  let limit = Infinity;
  for (const bound of bounds) {
    limit = Math.min(limit, bound.of(state, slot));
    if (limit <= least) return limit;
  }
  return limit;
}

/** The levels after a slot in a mode. */
function stepped(problem: StopProblem, state: readonly number[], mode: number, slot: number): number[] {
  const { plugs, hours, levels, stores } = problem;
  const { free, shared } = plugs.modes[mode]!;
  const after = [...state];
  for (const { store, linkW } of free)
    after[store] = levels[store]!.charging(linkW, hours[slot]!)(state[store]!);
  for (const { totalW, hangs } of shared) {
    let leftW = totalW;
    for (const { store, linkW } of hangs) {
      const of = levels[store]!;
      after[store] = of.charging(Math.min(linkW, leftW), hours[slot]!)(state[store]!);
      const drawnWh = (of.wh[after[store]]! - of.wh[state[store]!]!) / stores[store]!.efficiencyIn;
      leftW = Math.max(0, leftW - drawnWh / hours[slot]!);
    }
  }
  return after;
}

/** From a state to the end, always in the mode that leaves the most room by the bounds. */
function followed(problem: StopProblem, bounds: readonly Bound[], from: Node, fromSlot: number): Reached {
  let node = from;
  for (let slot = fromSlot; slot < problem.hours.length; slot += 1) {
    let [chosen, most]: [Node | null, number] = [null, -Infinity];
    for (let mode = 0; mode < problem.plugs.modes.length; mode += 1) {
      const state = stepped(problem, node.state, mode, slot);
      const limit = limitOf(bounds, state, slot + 1, -Infinity);
      if (limit > most) [chosen, most] = [{ state, before: node, mode }, limit];
    }
    if (chosen === null) break;
    node = chosen;
  }
  return {
    modes: modesTo(node),
    worth: weighed(worthOf(problem.stores, storedAt(problem, node.state))),
  };
}

function modesTo(node: Node): number[] {
  return node.before === null ? [] : [...modesTo(node.before), node.mode];
}
