/*
 * Duffie & Beckman, Solar Engineering of Thermal Processes (4th ed. 2013, Wiley). Latitudes in degrees, south negative;
 * months January first.
 */

/** Table 1.6.1 (Klein 1977): the day number of each month whose radiation outside the atmosphere is the month's mean. */
export const meanDays: readonly number[] = [17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344];

/**
 * Table 1.10.1: monthly mean daily radiation outside the atmosphere on a horizontal plane, MJ/m2. Tolerances are how far the
 * formula with Cooper's declination on the mean days lies from the printed table, reckoned outside the project.
 */
// prettier-ignore
export const outsideRows: readonly { readonly lat: number; readonly tolerance: number; readonly monthly: readonly number[] }[] = [
  { lat: 45, tolerance: 0.27, monthly: [12.2, 17.4, 25.1, 33.2, 39.2, 41.7, 40.4, 35.3, 27.8, 19.6, 13.3, 10.7] },
  { lat: 30, tolerance: 0.27, monthly: [21.3, 25.7, 31.5, 36.8, 40.0, 41.1, 40.4, 37.8, 33.2, 27.4, 22.2, 19.9] },
  { lat: 15, tolerance: 0.27, monthly: [29.6, 32.6, 35.9, 38.0, 38.5, 38.4, 38.3, 38.0, 36.4, 33.4, 30.1, 28.5] },
  { lat: 0, tolerance: 0.1, monthly: [36.2, 37.4, 37.8, 36.7, 34.8, 33.5, 34.0, 35.7, 37.2, 37.3, 36.3, 35.7] },
  { lat: -10, tolerance: 0.1, monthly: [39.5, 39.3, 37.7, 34.5, 31.1, 29.2, 29.9, 32.9, 36.3, 38.5, 39.3, 39.4] },
  { lat: -45, tolerance: 0.33, monthly: [42.8, 37.1, 28.6, 19.6, 12.9, 10.0, 11.3, 16.6, 24.9, 34.0, 41.2, 44.5] },
  { lat: -60, tolerance: 0.43, monthly: [41.0, 32.4, 21.2, 10.9, 4.5, 2.2, 3.1, 8.0, 17.0, 28.4, 38.7, 43.7] },
];

export interface MadisonMonth {
  /** Radiation outside the atmosphere, on the ground, and on the tilted plane (H0, H and H_T of the book), MJ/m2 a day. */
  readonly outside: number;
  readonly horizontal: number;
  readonly tilted: number;
  readonly groundReflectance: number;
  /**
   * How much more the plane gets when the beam is spread over the day by the hourly ratios and not like the radiation outside
   * the atmosphere, per cent: both weights integrated outside the project, from the published formulas.
   */
  readonly hourlyRatiosAddPct: number;
}

/** Example 2.19.1: Madison, 43 N, a plane tilted by 60 degrees facing south. */
// prettier-ignore
export const madisonMonths: readonly MadisonMonth[] = [
  { outside: 13.37, horizontal: 6.44, groundReflectance: 0.7, tilted: 13.7, hourlyRatiosAddPct: -3.7 },
  { outside: 18.81, horizontal: 9.89, groundReflectance: 0.7, tilted: 17.2, hourlyRatiosAddPct: -2.5 },
  { outside: 26.03, horizontal: 12.86, groundReflectance: 0.4, tilted: 15.8, hourlyRatiosAddPct: -0.6 },
  { outside: 33.78, horizontal: 16.05, groundReflectance: 0.2, tilted: 14.7, hourlyRatiosAddPct: 1.9 },
  { outside: 39.42, horizontal: 21.36, groundReflectance: 0.2, tilted: 16.6, hourlyRatiosAddPct: 2.8 },
  { outside: 41.78, horizontal: 23.04, groundReflectance: 0.2, tilted: 16.5, hourlyRatiosAddPct: 3.0 },
  { outside: 40.56, horizontal: 22.58, groundReflectance: 0.2, tilted: 16.8, hourlyRatiosAddPct: 3.0 },
  { outside: 35.92, horizontal: 20.33, groundReflectance: 0.2, tilted: 17.5, hourlyRatiosAddPct: 2.3 },
  { outside: 28.8, horizontal: 14.59, groundReflectance: 0.2, tilted: 15.6, hourlyRatiosAddPct: 0.5 },
  { outside: 20.9, horizontal: 10.48, groundReflectance: 0.2, tilted: 15.2, hourlyRatiosAddPct: -2.1 },
  { outside: 14.62, horizontal: 6.37, groundReflectance: 0.2, tilted: 11.4, hourlyRatiosAddPct: -3.9 },
  { outside: 11.91, horizontal: 5.74, groundReflectance: 0.4, tilted: 12.7, hourlyRatiosAddPct: -4.1 },
];
