/** Hides what binary fractions add in the last places: 0.57 as a percentage is 57, not 56.99999999999999. */
const significantDigits = 12;

/** A stored number as its field shows it; nothing when it is no number. */
export function asShown(stored: unknown, factor: number): number | '' {
  if (typeof stored !== 'number' || !Number.isFinite(stored)) return '';
  return Number((stored * factor).toPrecision(significantDigits));
}

export function asStored(shown: number, factor: number): number {
  return Number((shown / factor).toPrecision(significantDigits));
}
