import type { Cell } from './mean-of-cells.ts';

/** How full a store was, between two shares. */
export type Fullness = Cell;

/** A gauge in whole per cent rounds by up to so much; at its two ends it says exactly full and empty. */
const gaugeHalfStep = 0.005;

export function fullnessOfShare(share: number): Fullness {
  if (share <= 0 || share >= 1) return { low: share, high: share };
  return { low: Math.max(0, share - gaugeHalfStep), high: Math.min(1, share + gaugeHalfStep) };
}

/** The share by which a store's level fell, between two bounds; the low one is never below 0. */
export function fallBetween(before: Fullness, after: Fullness): Cell {
  return { low: Math.max(0, before.low - after.high), high: Math.max(0, before.high - after.low) };
}

/** A meter's three digits are no finer than this share of what they show (common practice, no source). */
const meterHalfStep = 0.005;

/** What a meter counted, between two bounds, Wh. */
export function countedWh(energyWh: number): Cell {
  return { low: energyWh * (1 - meterHalfStep), high: energyWh * (1 + meterHalfStep) };
}

/** Quotient of two quantities that are known between bounds; open above where the lower quantity may be 0. */
export function quotient(above: Cell, below: Cell): Cell {
  return { low: above.low / below.high, high: below.low > 0 ? above.high / below.low : Infinity };
}

export function times({ low, high }: Cell, factor: number): Cell {
  return { low: low * factor, high: high * factor };
}
