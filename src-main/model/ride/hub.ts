import type { HubPower } from '../../../shared-types/item.ts';
import { alternatorOutput, ratedLoadOhm, referenceAlternator, referenceRatingW } from './alternator.ts';
import { msPerKmh } from './solve-speed.ts';

/** A generator hub in its wheel. */
export interface HubModel {
  readonly power: HubPower;
  readonly wheelCircumferenceM: number;
  /** Drag with nothing connected, W, at 10 and at 30 km/h. */
  readonly idleDragW10: number;
  readonly idleDragW30: number;
}

/** The converter between hub and USB plug. */
export interface ConverterModel {
  readonly efficiency: number;
  readonly startSpeedKmh: number;
  readonly outputW: number;
}

/**
 * Electrical power of the hub, W: the reference generator scaled to the rating, or the rider's measured curve,
 * straight between points, zero at rest, level beyond the last point.
 */
export function hubElectricalW(speedKmh: number, hub: HubModel): number {
  if (hub.power.as === 'curve') return onCurve(speedKmh, hub.power.points);
  const reference = alternatorOutput(speedKmh, hub.wheelCircumferenceM, ratedLoadOhm, referenceAlternator);
  return (reference.powerW * hub.power.ratedW) / referenceRatingW;
}

function onCurve(
  speedKmh: number,
  points: readonly { readonly speedKmh: number; readonly powerW: number }[],
): number {
  let before = { speedKmh: 0, powerW: 0 };
  for (const point of points) {
    if (speedKmh <= point.speedKmh) {
      const span = point.speedKmh - before.speedKmh;
      const along = span > 0 ? (speedKmh - before.speedKmh) / span : 1;
      return before.powerW + (point.powerW - before.powerW) * along;
    }
    before = point;
  }
  return before.powerW;
}

/** Drag of the hub with nothing connected, W: k1 v + k2 v^2 through its values at 10 and 30 km/h, never below 0. */
export function idleDragW(speedKmh: number, hub: HubModel): number {
  const slow = 10 * msPerKmh;
  const fast = 30 * msPerKmh;
  const quadratic = (hub.idleDragW30 / fast - hub.idleDragW10 / slow) / (fast - slow);
  const linear = hub.idleDragW10 / slow - quadratic * slow;
  const speedMs = speedKmh * msPerKmh;
  return Math.max(0, linear * speedMs + quadratic * speedMs ** 2);
}

/** Winding loss per watt delivered: 3 ohm in the winding against 12 ohm in the load of the reference generator. */
const copperShare = referenceAlternator.windingOhm / ratedLoadOhm;

/** Mechanical drag while it charges, W: electrical output, winding loss and idle drag. Always above the output. */
export function loadedDragW(speedKmh: number, hub: HubModel): number {
  return hubElectricalW(speedKmh, hub) * (1 + copperShare) + idleDragW(speedKmh, hub);
}

/** Power at the USB plug, W: nothing below the converter's start speed, at most what it gives. */
export function plugPowerW(speedKmh: number, hub: HubModel, converter: ConverterModel): number {
  if (speedKmh < converter.startSpeedKmh) return 0;
  return Math.min(converter.outputW, hubElectricalW(speedKmh, hub) * converter.efficiency);
}
