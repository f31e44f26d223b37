import { msPerKmh } from './solve-speed.ts';

/** A permanent-magnet alternator: EMF proportional to speed behind an inductance and a winding resistance. */
export interface Alternator {
  readonly polePairs: number;
  /** EMF per electrical angular speed, V s/rad (rms). */
  readonly emfVsPerRad: number;
  readonly inductanceH: number;
  readonly windingOhm: number;
}

/**
 * Reference generator for a 6 V, 3 W rating. Chosen so that it meets every approval limit of such generators into
 * 12 ohm (at least 3 V at 5 km/h and 5.7 V at 15 km/h, at most 7 V at 30 km/h) and the ratios of JIS C 9502;
 * an assumption, not a measurement.
 */
export const referenceAlternator: Alternator = {
  polePairs: 13,
  emfVsPerRad: 0.09,
  inductanceH: 0.15,
  windingOhm: 3,
};
/** The load of the approval test, and what the reference generator is rated at there. */
export const ratedLoadOhm = 12;
export const referenceRatingW = 3;

/** What the alternator does into a resistive load. */
export interface AlternatorOutput {
  readonly currentA: number;
  readonly voltageV: number;
  readonly powerW: number;
  /** Lost in the winding. */
  readonly copperW: number;
}

/**
 * Steady output into a resistance: I = E / sqrt((R + Ra)^2 + (omega L)^2). Linear iron only.
 *
 * @param speedKmh 0 or more
 * @param circumferenceM rolling circumference of the wheel
 * @param loadOhm above 0
 */
export function alternatorOutput(
  speedKmh: number,
  circumferenceM: number,
  loadOhm: number,
  alternator: Alternator,
): AlternatorOutput {
  const omega = (2 * Math.PI * alternator.polePairs * speedKmh * msPerKmh) / circumferenceM;
  const currentA =
    (alternator.emfVsPerRad * omega) /
    Math.hypot(alternator.windingOhm + loadOhm, omega * alternator.inductanceH);
  return {
    currentA,
    voltageV: currentA * loadOhm,
    powerW: currentA ** 2 * loadOhm,
    copperW: currentA ** 2 * alternator.windingOhm,
  };
}
