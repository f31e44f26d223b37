/** Hours from noon of the columns: noon itself, then the middles of the hours. */
export const hoursFromNoon: readonly number[] = [0, 0.5, 1.5, 2.5, 3.5, 4.5, 5.5, 6.5];

export interface HourlyRatios {
  readonly sunsetDeg: number;
  /** Ratios of hourly to daily global and diffuse radiation, in the columns above until sunset. */
  readonly global: readonly number[];
  readonly diffuse: readonly number[];
  /** Integral of the global ratio over the day; that of the diffuse one is 1. */
  readonly globalOverDay: number;
}

/*
 * Collares-Pereira & Rabl 1979, Solar Energy 22:155-164 (global); Liu & Jordan 1960, Solar Energy 4(3):1-19 (diffuse): values of the
 * published equations reckoned outside the project, from three copies that agree.
 */
// prettier-ignore
export const hourlyRatios: readonly HourlyRatios[] = [
  { sunsetDeg: 60, globalOverDay: 1.0017,
    global: [0.2045, 0.1999, 0.1652, 0.1047, 0.0337],
    diffuse: [0.1911, 0.1879, 0.162, 0.1121, 0.0416] },
  { sunsetDeg: 75, globalOverDay: 0.9927,
    global: [0.1665, 0.1639, 0.1437, 0.1077, 0.0633, 0.0192],
    diffuse: [0.1547, 0.1529, 0.1388, 0.1116, 0.073, 0.0259] },
  { sunsetDeg: 90, globalOverDay: 0.9917,
    global: [0.1417, 0.14, 0.127, 0.1033, 0.0731, 0.0412, 0.0122],
    diffuse: [0.1309, 0.1298, 0.1209, 0.1038, 0.0797, 0.0501, 0.0171] },
  { sunsetDeg: 105, globalOverDay: 0.9978,
    global: [0.1244, 0.1233, 0.1142, 0.0976, 0.0758, 0.0518, 0.0285, 0.0084],
    diffuse: [0.1144, 0.1136, 0.1075, 0.0956, 0.0789, 0.0583, 0.0354, 0.0117] },
  { sunsetDeg: 120, globalOverDay: 1.0072,
    global: [0.112, 0.1112, 0.1045, 0.092, 0.0754, 0.0567, 0.0378, 0.0205],
    diffuse: [0.1026, 0.102, 0.0974, 0.0885, 0.0759, 0.0604, 0.0431, 0.0253] },
];
