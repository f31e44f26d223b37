/** The night that a key goes to from the one at `place`; null for a key that goes nowhere. */
export function nightReached(key: string, place: number, count: number, perRow: number): number | null {
  const target = targetOf(key, place, count, perRow);
  return target === null || target < 0 || target >= count ? null : target;
}

function targetOf(key: string, place: number, count: number, perRow: number): number | null {
  switch (key) {
    case 'ArrowLeft':
      return place - 1;
    case 'ArrowRight':
      return place + 1;
    case 'ArrowUp':
      return place - perRow;
    case 'ArrowDown':
      return place + perRow;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return null;
  }
}
