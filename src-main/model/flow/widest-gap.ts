import { allowedFailures } from './margin.ts';

/** Whether a history carries the plan with a wall only after every so many days. */
export type CarriesGap = (history: number, days: number) => boolean;

/**
 * The most days between nights with a wall at which enough histories carry the plan; 0 when not even a wall every night is
 * enough. A longer gap is never easier to carry, so a history that carries one need not be walked again for a shorter, nor
 * one that fails for a longer.
 *
 * @param most the days of the tour: then there is no wall on the way
 * @param histories how many there are, at least one
 * @param confidence share of the histories that is to carry it, 0..1
 */
export function widestGapDays(
  most: number,
  carries: CarriesGap,
  histories: number,
  confidence: number,
): number {
  const allowed = allowedFailures(histories, confidence);
  let open = Array.from({ length: histories }, (_, history) => history);
  let [failed, carried, refused] = [0, 0, most + 1];
  // No wall at all goes first: it settles most kits that make their own energy.
  for (let days = most; refused - carried > 1; days = Math.floor((carried + refused) / 2)) {
    const fails = open.filter((history) => !carries(history, days));
    if (failed + fails.length > allowed) {
      refused = days;
      open = fails;
      continue;
    }
    const failing = new Set(fails);
    carried = days;
    failed += fails.length;
    open = open.filter((history) => !failing.has(history));
  }
  return carried;
}
