/** Bead seats of common rims, mm (ISO 5775), smallest first. */
export const rimsMm = [349, 406, 507, 559, 584, 622] as const;

/** Widths of tyre, mm: as wide as the circumference of a hub’s wheel allows on the largest rim. */
export const tyreMm = { usual: 40, least: 18, most: 85 } as const;

const mmPerM = 1000;

/** Circumference of a wheel, m: pi x (bead seat + twice the tyre). Under load it rolls a per cent or so less. */
export function circumferenceM(rimMm: number, widthMm: number): number {
  return Math.round(Math.PI * (rimMm + 2 * widthMm)) / mmPerM;
}
