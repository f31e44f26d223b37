/** One monthly mean clearness and how single days spread about it. */
export interface ClearnessRow {
  readonly mean: number;
  readonly clearest: number;
  /** Bend by Herzog's approximation, and the exact one. */
  readonly herzog: number;
  readonly gamma: number;
  readonly deviation: number;
  /** Share of days below a clearness of 0.2, 0.3, 0.4, 0.5, 0.6 and 0.7. */
  readonly sharesBelow: readonly number[];
}

/** Clearness of the columns of `sharesBelow`. */
export const clearnessColumns: readonly number[] = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7];

/*
 * Bendt, Collares-Pereira & Rabl 1981, Solar Energy 27:1-5; clearest day of Hollands & Huget 1983, Solar Energy 30:195-209; bend as
 * in Duffie & Beckman, eqs. 2.9.4 to 2.9.6: values of the published equations reckoned outside the project.
 */
// prettier-ignore
export const clearnessRows: readonly ClearnessRow[] = [
  { mean: 0.3, clearest: 0.6914, herzog: -2.1, gamma: -2.125, deviation: 0.177, sharesBelow: [0.367, 0.554, 0.705, 0.827, 0.926, 1] },
  { mean: 0.4, clearest: 0.7354, herzog: 0.182, gamma: 0.186, deviation: 0.198, sharesBelow: [0.208, 0.35, 0.495, 0.642, 0.792, 0.945] },
  { mean: 0.45, clearest: 0.7507, herzog: 1.263, gamma: 1.229, deviation: 0.199, sharesBelow: [0.148, 0.263, 0.394, 0.541, 0.707, 0.895] },
  { mean: 0.5, clearest: 0.7646, herzog: 2.314, gamma: 2.272, deviation: 0.194, sharesBelow: [0.1, 0.188, 0.298, 0.437, 0.611, 0.83] },
  { mean: 0.55, clearest: 0.7781, herzog: 3.381, gamma: 3.374, deviation: 0.183, sharesBelow: [0.062, 0.124, 0.212, 0.334, 0.506, 0.747] },
  { mean: 0.6, clearest: 0.7915, herzog: 4.575, gamma: 4.621, deviation: 0.167, sharesBelow: [0.034, 0.073, 0.136, 0.235, 0.393, 0.644] },
  { mean: 0.65, clearest: 0.8048, herzog: 6.124, gamma: 6.17, deviation: 0.144, sharesBelow: [0.015, 0.035, 0.073, 0.144, 0.276, 0.519] },
  { mean: 0.7, clearest: 0.8182, herzog: 8.517, gamma: 8.373, deviation: 0.115, sharesBelow: [0.004, 0.011, 0.029, 0.068, 0.16, 0.371] },
];

/** One class of the transition library and the properties of its chain. */
export interface TransitionRow {
  readonly name: string;
  readonly dullest: number;
  readonly clearest: number;
  readonly mean: number;
  readonly deviation: number;
  /** Correlation of one day with the next, about the long-run mean. */
  readonly lagOne: number;
}

/*
 * Aguiar, Collares-Pereira & Conde 1988, Solar Energy 40(3):269-279: ranges of the classes, and mean, deviation and lag-1 of the
 * chains reckoned outside the project from their matrices (rows made to add up to 1, uniform within a state).
 */
// prettier-ignore
export const transitionRows: readonly TransitionRow[] = [
  { name: 'up to 0.30', dullest: 0.031, clearest: 0.705, mean: 0.241, deviation: 0.156, lagOne: 0.39 },
  { name: '0.30 to 0.35', dullest: 0.058, clearest: 0.694, mean: 0.334, deviation: 0.167, lagOne: 0.02 },
  { name: '0.35 to 0.40', dullest: 0.051, clearest: 0.753, mean: 0.375, deviation: 0.166, lagOne: 0.28 },
  { name: '0.40 to 0.45', dullest: 0.052, clearest: 0.753, mean: 0.429, deviation: 0.167, lagOne: 0.31 },
  { name: '0.45 to 0.50', dullest: 0.028, clearest: 0.807, mean: 0.476, deviation: 0.167, lagOne: 0.33 },
  { name: '0.50 to 0.55', dullest: 0.053, clearest: 0.856, mean: 0.526, deviation: 0.157, lagOne: 0.31 },
  { name: '0.55 to 0.60', dullest: 0.044, clearest: 0.818, mean: 0.575, deviation: 0.154, lagOne: 0.23 },
  { name: '0.60 to 0.65', dullest: 0.085, clearest: 0.846, mean: 0.62, deviation: 0.136, lagOne: 0.24 },
  { name: '0.65 to 0.70', dullest: 0.01, clearest: 0.842, mean: 0.668, deviation: 0.119, lagOne: 0.2 },
  { name: 'above 0.70', dullest: 0.319, clearest: 0.865, mean: 0.728, deviation: 0.073, lagOne: 0.25 },
];
