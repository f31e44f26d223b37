import { runTour, type FlatMustHave } from './run-tour.ts';
import type { Network } from './network.ts';
import { createState } from './step-state.ts';
import type { Supply } from './supply.ts';
import type { Timeline } from './timeline.ts';

/** Share of histories in which no must-have may run flat. */
export const defaultConfidence = 0.9;
/** Largest factor tried: a margin is capped at "more than +300 %". */
export const largestUseFactor = 4;
/** The factor is found to a quarter of a per cent of planned use. */
const factorTolerance = 0.0025;

export interface MarginResult {
  /** Largest factor carried, less 1; -1 when no use at all is carried. */
  readonly value: number;
  readonly capped: boolean;
  /** What runs flat first just above the margin: device index and step; null when capped. */
  readonly limit: { readonly device: number; readonly step: number } | null;
}

/**
 * The energy margin: the largest factor m by which all use can grow so that no must-have runs flat in at least
 * `confidence` of the histories, less 1.
 *
 * @param supplies one a history, at least one
 */
export function energyMargin(
  network: Network,
  timeline: Timeline,
  supplies: readonly Supply[],
  confidence = defaultConfidence,
): MarginResult {
  const state = createState(network);
  const flat: FlatMustHave = { step: -1, device: -1 };
  const allowed = Math.floor(supplies.length * (1 - confidence) + 1e-9);
  const limit: FlatMustHave = { step: -1, device: -1 };

  const carries = (factor: number): boolean => {
    let failures = 0;
    for (const supply of supplies) {
      runTour(network, timeline, supply, factor, state, flat, null);
      if (flat.step < 0) continue;
      failures += 1;
      if (failures > allowed) {
        limit.step = flat.step;
        limit.device = flat.device;
        return false;
      }
    }
    return true;
  };

  if (carries(largestUseFactor)) return { value: largestUseFactor - 1, capped: true, limit: null };
  let carried = 0;
  let refused = largestUseFactor;
  while (refused - carried > factorTolerance) {
    const middle = (carried + refused) / 2;
    if (carries(middle)) carried = middle;
    else refused = middle;
  }
  carries(refused);
  return { value: carried - 1, capped: false, limit: { device: limit.device, step: limit.step } };
}
