/**
 * The value below which `share` of the values lie, between neighbours by straight line.
 *
 * @param sorted rising, at least one
 * @param share 0..1
 */
export function percentile(sorted: ArrayLike<number>, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const above = Math.min(sorted.length - 1, below + 1);
  return sorted[below]! + (place - below) * (sorted[above]! - sorted[below]!);
}
