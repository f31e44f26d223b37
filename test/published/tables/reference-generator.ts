/** What a generator does at one speed: into 12 ohm, and into the load that draws most. */
export interface GeneratorRow {
  readonly kmh: number;
  readonly hertz: number;
  readonly radPerS: number;
  readonly openV: number;
  readonly reactanceOhm: number;
  readonly ampere: number;
  readonly volt: number;
  readonly watts: number;
  readonly copperW: number;
  readonly bestOhm: number;
  readonly mostW: number;
  readonly mostV: number;
}

/*
 * Constructed: the alternator equations of Wullkopf (EMF proportional to speed, inductance, resistance; reprinted in Schultz's
 * monograph on bicycle lighting) reckoned outside the project for 13 pole pairs, 0.09 V s/rad, 0.15 H and 3 ohm in a wheel of
 * 2.155 m. No published values.
 */
// prettier-ignore
const rows = [
  // km/h, Hz, rad/s, V open, ohm of reactance; into 12 ohm A, V, W, W lost in copper; best ohm, its W and V
  [5, 8.378, 52.643, 4.738, 7.897, 0.2795, 3.354, 0.9374, 0.2344, 8.447, 0.9805, 2.878],
  [10, 16.757, 105.287, 9.476, 15.793, 0.435, 5.2205, 2.2712, 0.5678, 16.075, 2.3536, 6.151],
  [15, 25.135, 157.93, 14.214, 23.69, 0.5069, 6.0831, 3.0837, 0.7709, 23.879, 3.7582, 9.473],
  [20, 33.514, 210.573, 18.952, 31.586, 0.542, 6.5039, 3.525, 0.8813, 31.728, 5.1711, 12.809],
  [25, 41.892, 263.217, 23.69, 39.483, 0.5609, 6.7306, 3.7751, 0.9438, 39.596, 6.5873, 16.15],
  [30, 50.271, 315.86, 28.427, 47.379, 0.572, 6.8642, 3.9264, 0.9816, 47.474, 8.0053, 19.495],
  [40, 67.028, 421.147, 37.903, 63.172, 0.5838, 7.0052, 4.0894, 1.0224, 63.243, 10.8438, 26.188],
] as const;

export const referenceGenerator: readonly GeneratorRow[] = rows.map((row) => {
  const [kmh, hertz, radPerS, openV, reactanceOhm, ampere, volt, watts, copperW, bestOhm, mostW, mostV] = row;
  return { kmh, hertz, radPerS, openV, reactanceOhm, ampere, volt, watts, copperW, bestOhm, mostW, mostV };
});
