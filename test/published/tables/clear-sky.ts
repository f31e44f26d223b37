/*
 * Kasten & Young 1989, Applied Optics 28:4735-4738: relative air mass at an elevation in degrees. `formula` is their equation,
 * `integrated` their table II (exact integration), which was read for four elevations.
 */
// prettier-ignore
export const airMasses: readonly { readonly elevation: number; readonly formula: number; readonly integrated?: number }[] = [
  { elevation: 90, formula: 0.9997 },
  { elevation: 80, formula: 1.0151 },
  { elevation: 70, formula: 1.0637 },
  { elevation: 60, formula: 1.154 },
  { elevation: 50, formula: 1.3042 },
  { elevation: 40, formula: 1.5534 },
  { elevation: 30, formula: 1.9943 },
  { elevation: 25, formula: 2.356 },
  { elevation: 20, formula: 2.9031 },
  { elevation: 15, formula: 3.8129 },
  { elevation: 10, formula: 5.586, integrated: 5.5841 },
  { elevation: 5, formula: 10.3058, integrated: 10.3164 },
  { elevation: 3, formula: 15.1477 },
  { elevation: 2, formula: 19.4332 },
  { elevation: 1, formula: 26.3106, integrated: 26.2595 },
  { elevation: 0, formula: 37.9196, integrated: 38.0868 },
];

export interface CloudlessHour {
  /** Apparent zenith. */
  readonly zenithDeg: number;
  /** Absolute. */
  readonly airMass: number;
  /** Linke turbidity. */
  readonly turbidity: number;
  readonly heightM: number;
  readonly normalWm2: number;
  readonly global: number;
  readonly beam: number;
  readonly diffuse: number;
}

/** Ineichen & Perez 2002, Solar Energy 73:151-157, in the tests of pvlib-python (tests/test_clearsky.py); W/m2. */
// prettier-ignore
export const cloudlessHours: readonly CloudlessHour[] = [
  { zenithDeg: 10, airMass: 1, turbidity: 3, heightM: 0, normalWm2: 1364, global: 1038.159219, beam: 942.208186, diffuse: 110.265293 },
  { zenithDeg: 10, airMass: 1, turbidity: 3, heightM: 0, normalWm2: 1370, global: 1042.725902, beam: 946.352797, diffuse: 110.750331 },
  { zenithDeg: 10, airMass: 1, turbidity: 3, heightM: 2000, normalWm2: 1364, global: 1134.243124, beam: 994.953778, diffuse: 154.404929 },
  { zenithDeg: 0, airMass: 1, turbidity: 2, heightM: 0, normalWm2: 1364, global: 1095.770748, beam: 1014.388074, diffuse: 81.382674 },
  { zenithDeg: 0, airMass: 1, turbidity: 4, heightM: 0, normalWm2: 1364, global: 1014.157273, beam: 861.113444, diffuse: 153.043829 },
  { zenithDeg: 80, airMass: 5.5, turbidity: 2, heightM: 0, normalWm2: 1364, global: 134.3152, beam: 687.613051, diffuse: 14.912447 },
  { zenithDeg: 80, airMass: 5.5, turbidity: 4, heightM: 0, normalWm2: 1364, global: 87.749773, beam: 255.500982, diffuse: 43.382493 },
  { zenithDeg: 46.0467599, airMass: 1.32355476, turbidity: 3, heightM: 0, normalWm2: 1364, global: 704.696813, beam: 888.90147, diffuse: 87.736013 },
  { zenithDeg: 72.41687122, airMass: 3.01614096, turbidity: 3, heightM: 0, normalWm2: 1364, global: 251.994277, beam: 655.449252, diffuse: 53.990135 },
  { zenithDeg: 82.85457044, airMass: 6.97935524, turbidity: 3, heightM: 0, normalWm2: 1364, global: 65.494266, beam: 321.160922, diffuse: 25.54562 },
];
