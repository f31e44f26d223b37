import { chargeSlot } from './charge-slot.ts';
import type { Mode } from './modes.ts';
import { storedNow, type StopProblem } from './problem.ts';
import { fewerMoves, fewerModes } from './tidy-modes.ts';
import type { Hang } from './ways.ts';
import { weighed, weightOf, worthOf } from './worth.ts';

/** What hangs where in a slot, in the order of the stores. */
export type Slot = readonly Hang[];

/** For less than this nobody moves a plug, Wh stored (our choice). */
const moveWorthWh = 0.25;
/** That must-haves hold a Wh an hour sooner is worth this, Wh stored: it decides between near equals (our choice). */
const soonerWorthWh = 0.02;

/** What the stores hold at the end of each slot, Wh. */
export function followSlots(problem: StopProblem, slots: readonly Slot[]): readonly number[][] {
  let storedWh = storedNow(problem.stores);
  return slots.map((hangs, slot) => {
    storedWh = chargeSlot(problem.stores, problem.plugs, storedWh, hangs, problem.hours[slot]!);
    return storedWh;
  });
}

/** What a plan is worth, weighed, less the trouble of moving plugs. */
export function meritOf(problem: StopProblem, slots: readonly Slot[]): number {
  const { stores, hours } = problem;
  const ends = followSlots(problem, slots);
  const end = ends.at(-1) ?? storedNow(stores);
  const mustHaveWhH = ends.reduce((sum, wh, slot) => sum + mustHaveWh(problem, wh) * hours[slot]!, 0);
  const merit = soonerWorthWh * mustHaveWhH - moveWorthWh * movesOf(slots);
  return weighed(worthOf(stores, end)) + weightOf.stored * merit;
}

function mustHaveWh({ stores }: StopProblem, storedWh: readonly number[]): number {
  return stores.reduce((sum, { rank }, store) => sum + (rank === 'must-have' ? storedWh[store]! : 0), 0);
}

/** Plugs put in, from the first to the last. */
function movesOf(slots: readonly Slot[]): number {
  return slots.reduce((sum, hangs, slot) => sum + moved(slots[slot - 1] ?? [], hangs), 0);
}

/** Plugs put in that were not there before. */
function moved(before: Slot, after: Slot): number {
  return after.filter(
    ({ store, portClass }) => !before.some((hang) => hang.store === store && hang.portClass === portClass),
  ).length;
}

/**
 * Turns the modes of a plan into what a rider does: the order and the choice of modes that spare the most plugs, must-haves
 * early, and nothing plugged in that is not worth it. Served need stays as good as it was; stored energy is given up for
 * no more than a plug moved less is worth.
 */
export function tidied(problem: StopProblem, modes: readonly Mode[]): readonly Slot[] {
  let looksLeft = mostLooks;
  const merit = (tried: readonly Mode[]): number => {
    looksLeft -= 1;
    return looksLeft < 0 ? -Infinity : meritOf(problem, pluggedIn(tried));
  };
  const plugged = pluggedIn(fewerMoves(fewerModes(modes, merit), merit));
  return withoutTrifles(plugged, (slots) => meritOf(problem, slots));
}

/** Rows of modes looked at for a better one (our choice); what riders have needs fewer. */
const mostLooks = 3000;
/** Ways to plug in that are looked at for each mode: enough to leave plugs where they are. */
const mostWays = 24;

/** Modes as slots; each is plugged in the way that moves the fewest plugs. */
function pluggedIn(modes: readonly Mode[]): readonly Slot[] {
  let before: Slot = [];
  return modes.map(({ ways }) => {
    before = ways
      .slice(0, mostWays)
      .reduce((best, way) => (moved(before, way) < moved(before, best) ? way : best));
    return before;
  });
}

/** Takes a store off a port as soon as the plan does as well without, and plugs it in later where that is better. */
function withoutTrifles(slots: readonly Slot[], merit: (slots: readonly Slot[]) => number): readonly Slot[] {
  let [kept, best] = [slots, merit(slots)];
  const tryWithout = (isIn: (slot: number, hang: Hang) => boolean, least: (reached: number) => boolean) => {
    const without = kept.map((hangs, slot) => hangs.filter((hang) => !isIn(slot, hang)));
    const reached = merit(without);
    if (least(reached)) [kept, best] = [without, reached];
  };
  const each = (visit: (slot: number, isSame: (hang: Hang) => boolean) => void): void =>
    slots.forEach((hangs, slot) => {
      for (const { store, portClass } of hangs)
        visit(slot, (hang) => hang.store === store && hang.portClass === portClass);
    });
  each((slot, isSame) => {
    tryWithout(
      (at, hang) => at >= slot && isSame(hang),
      (reached) => reached >= best,
    );
  });
  each((slot, isSame) => {
    tryWithout(
      (at, hang) => at <= slot && isSame(hang),
      (reached) => reached > best,
    );
  });
  return kept;
}
