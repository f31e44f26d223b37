/**
 * The choice among four aircraft of Hwang & Yoon 1981, Multiple Attribute Decision Making (Springer LNEMS 186): speed, range,
 * payload, price, reliability and handling. Weights and the fourth being a cost: orms.pef.czu.cz/21ExFAPPM.html. The matrix is from
 * memory, but reproduces ten of that page's twelve pairwise sums and its best order; the other two stand in swapped cells there.
 */
export const aircraft = [
  [2.0, 1500, 20000, 5.5, 5, 9],
  [2.5, 2700, 18000, 6.5, 3, 5],
  [1.8, 2000, 21000, 4.5, 7, 7],
  [2.2, 1800, 20000, 5.0, 5, 5],
] as const;
export const aircraftWeights = [0.2, 0.1, 0.1, 0.1, 0.2, 0.3] as const;
/** The place of the price. */
export const aircraftCost = 3;
