import type { HubLoad } from '../../../shared-types/hub-item.ts';
import { msPerKmh } from './solve-speed.ts';

/** A permanent-magnet alternator: EMF proportional to speed behind an inductance and a winding resistance. */
export interface Alternator {
  readonly polePairs: number;
  /** EMF per electrical angular speed, V s/rad (rms). */
  readonly emfVsPerRad: number;
  readonly inductanceH: number;
  readonly windingOhm: number;
}

/** Nominal voltage of the lamps a hub generator is rated for. */
const ratedV = 6;

/**
 * Reference generator of 3 W in a 622 mm wheel. Chosen so that it meets every approval limit of such generators into 12 ohm
 * (at least 3 V at 5 km/h and 5.7 V at 15 km/h, at most 7 V at 30 km/h) and the ratios of JIS C 9502; an assumption, not a
 * measurement.
 */
const reference = {
  ratedW: 3,
  circumferenceM: 2.155,
  alternator: { polePairs: 13, emfVsPerRad: 0.09, inductanceH: 0.15, windingOhm: 3 },
} as const;

/** The load of the approval test of a rating, ohm: 12 for 3 W. */
export function ratedLoadOhm(ratedW: number): number {
  return ratedV ** 2 / ratedW;
}

/**
 * A generator that meets the approval limits at its rating in its wheel. Impedances grow as the rating falls, so that the
 * voltages into the rated load stay those of the reference generator; EMF and inductance grow with the wheel, which turns
 * slower, so that they stay so at the same road speed.
 *
 * @param ratedW above 0: 3, 2.4 or 1.5 W are usual
 * @param ratedCircumferenceM of the wheel the rating is for
 */
export function fittedAlternator(ratedW: number, ratedCircumferenceM: number): Alternator {
  const { alternator } = reference;
  const impedance = reference.ratedW / ratedW;
  const turns = ratedCircumferenceM / reference.circumferenceM;
  return {
    polePairs: alternator.polePairs,
    emfVsPerRad: alternator.emfVsPerRad * turns,
    inductanceH: alternator.inductanceH * impedance * turns,
    windingOhm: alternator.windingOhm * impedance,
  };
}

/** Electrical angular speed, rad/s: 2 pi x pole pairs x turns a second. */
export function electricalRadPerS(
  speedKmh: number,
  circumferenceM: number,
  { polePairs }: Alternator,
): number {
  return (2 * Math.PI * polePairs * speedKmh * msPerKmh) / circumferenceM;
}

/** What the alternator does into a resistive load. */
export interface AlternatorOutput {
  readonly currentA: number;
  readonly voltageV: number;
  readonly powerW: number;
  /** Lost in the winding. */
  readonly copperW: number;
}

/** Reactance, ohm: of the winding, less that of a capacitor in series. */
function reactanceOhm(radPerS: number, { inductanceH }: Alternator, seriesF: number): number {
  return radPerS * inductanceH - (seriesF > 0 && radPerS > 0 ? 1 / (radPerS * seriesF) : 0);
}

/**
 * Steady output into a resistance: I = E / sqrt((R + Ra)^2 + X^2). Linear iron only.
 *
 * @param radPerS electrical angular speed
 * @param loadOhm above 0
 * @param seriesF capacitor in series, F; 0 for none
 */
export function alternatorOutput(
  radPerS: number,
  loadOhm: number,
  alternator: Alternator,
  seriesF = 0,
): AlternatorOutput {
  const currentA =
    (alternator.emfVsPerRad * radPerS) /
    Math.hypot(alternator.windingOhm + loadOhm, reactanceOhm(radPerS, alternator, seriesF));
  return {
    currentA,
    voltageV: currentA * loadOhm,
    powerW: currentA ** 2 * loadOhm,
    copperW: currentA ** 2 * alternator.windingOhm,
  };
}

/** The resistance that draws most power: sqrt(R^2 + X^2), ohm. */
export function bestLoadOhm(radPerS: number, alternator: Alternator, seriesF = 0): number {
  return Math.hypot(alternator.windingOhm, reactanceOhm(radPerS, alternator, seriesF));
}

/** What a converter draws from a hub at one speed. */
export interface Drawn {
  readonly electricalW: number;
  /** Electrical power per mechanical power that becomes electrical: the winding's loss. */
  readonly windingEfficiency: number;
}

/** No current passes a capacitor too small to tell from none. */
export const nothingDrawn: Drawn = { electricalW: 0, windingEfficiency: 1 };

/**
 * What a load draws, at most `mostW`. With a capacitor in series no more is credited than the best load draws without one:
 * near resonance the linear model gives watts that no iron does.
 *
 * @param ratedOhm the load the generator is rated for
 * @param mostW what the converter can pass on
 */
export function drawnW(
  radPerS: number,
  load: HubLoad,
  ratedOhm: number,
  alternator: Alternator,
  seriesF: number,
  mostW = Infinity,
): Drawn {
  const loadOhm = load === 'tracking' ? bestLoadOhm(radPerS, alternator, seriesF) : ratedOhm;
  if (!Number.isFinite(loadOhm)) return nothingDrawn;
  const linearW = alternatorOutput(radPerS, loadOhm, alternator, seriesF).powerW;
  const untunedW =
    seriesF === 0 ? linearW : alternatorOutput(radPerS, bestLoadOhm(radPerS, alternator), alternator).powerW;
  const electricalW = Math.min(linearW, untunedW, mostW);
  const lighter = electricalW < linearW && (load === 'tracking' || seriesF > 0);
  const heldOhm = lighter ? lighterLoadOhm(electricalW, radPerS, alternator, seriesF) : loadOhm;
  return { electricalW, windingEfficiency: heldOhm / (alternator.windingOhm + heldOhm) };
}

/**
 * The lighter of the two loads that draw a power below the most: the larger root Ra of P ((R + Ra)^2 + X^2) = E^2 Ra. A
 * tracking converter that can pass on no more takes this one, for less current flows in the winding.
 */
function lighterLoadOhm(powerW: number, radPerS: number, alternator: Alternator, seriesF: number): number {
  const emfSquared = (alternator.emfVsPerRad * radPerS) ** 2;
  const half = (emfSquared - 2 * alternator.windingOhm * powerW) / 2;
  const impedanceSquared = bestLoadOhm(radPerS, alternator, seriesF) ** 2;
  return (half + Math.sqrt(Math.max(0, half ** 2 - powerW ** 2 * impedanceSquared))) / powerW;
}
