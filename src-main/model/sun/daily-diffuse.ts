import { radPerDeg } from '../angle.ts';

/** Sunset hour angle that parts the winter of Erbs et al. from their other seasons, rad. */
const seasonRad = 81.4 * radPerDeg;
const clearFrom = { winter: 0.715, other: 0.722 } as const;
const clearShare = { winter: 0.143, other: 0.175 } as const;

/**
 * Diffuse share of one day's global radiation (Erbs, Klein & Duffie 1982, Solar Energy 28(4):293-302).
 *
 * @param clearness of the day, global over extraterrestrial, 0..1
 * @param sunsetRad sunset hour angle
 * @returns 0.143..1; the polynomial of the longer days passes 1 by 0.4 % under a dark sky and is held there
 */
export function dailyDiffuseShare(clearness: number, sunsetRad: number): number {
  const k = clearness;
  if (sunsetRad <= seasonRad) {
    if (k >= clearFrom.winter) return clearShare.winter;
    return Math.min(1, 1 - 0.2727 * k + 2.4495 * k ** 2 - 11.9514 * k ** 3 + 9.3879 * k ** 4);
  }
  if (k >= clearFrom.other) return clearShare.other;
  return Math.min(1, 1 + 0.2832 * k - 2.5557 * k ** 2 + 0.8448 * k ** 3);
}
