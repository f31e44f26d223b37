import type { HubLoad, HubPower } from '../../../shared-types/hub-item.ts';
import { drawnW, electricalRadPerS, fittedAlternator, ratedLoadOhm, type Drawn } from './alternator.ts';
import { monotoneCurve } from './monotone-curve.ts';
import { msPerKmh } from './solve-speed.ts';

/** A generator hub in its wheel. */
export interface HubModel {
  readonly power: HubPower;
  readonly wheelCircumferenceM: number;
  /** Of the wheel its rating is for. */
  readonly ratedCircumferenceM: number;
  /** Drag switched off, W, at 10 and at 30 km/h. */
  readonly idleDragW10: number;
  readonly idleDragW30: number;
}

/** Rectifier and regulator between hub and USB plug. */
export interface ConverterModel {
  /** At the plug per W from the hub, 0..1. */
  readonly efficiency: number;
  readonly startSpeedKmh: number;
  readonly outputW: number;
  readonly load: HubLoad;
  /** Capacitor in series with the hub, uF; 0 for none. */
  readonly seriesCapacitorUF: number;
}

/** A generator wheel at any speed in km/h. */
export interface GeneratorWheel {
  /** null: nothing takes its power. */
  readonly startSpeedKmh: number | null;
  /** Power at the USB plug, W: nothing below the start, at most what the converter gives. */
  readonly plugW: (speedKmh: number) => number;
  /** Mechanical drag, W: charging, and switched off. */
  readonly onW: (speedKmh: number) => number;
  readonly offW: (speedKmh: number) => number;
}

/**
 * The wheel of a kit. Drag charging = electrical power / winding efficiency + drag switched off; a converter draws no more
 * than it can pass on.
 *
 * @param converter null: the hub only turns
 */
export function generatorWheel(hub: HubModel, converter: ConverterModel | null): GeneratorWheel {
  const offW = idleDrag(hub);
  if (converter === null) return { startSpeedKmh: null, plugW: () => 0, onW: offW, offW };
  const { efficiency, startSpeedKmh, outputW } = converter;
  const available = availableFrom(hub, converter);
  const drawn = (speedKmh: number): Drawn => {
    const { electricalW, windingEfficiency } = available(speedKmh);
    const taken = speedKmh < startSpeedKmh ? 0 : Math.min(electricalW, outputW / efficiency);
    return { electricalW: taken, windingEfficiency };
  };
  return {
    startSpeedKmh,
    plugW: (speedKmh) => drawn(speedKmh).electricalW * efficiency,
    onW: (speedKmh) => {
      const { electricalW, windingEfficiency } = drawn(speedKmh);
      return electricalW / windingEfficiency + offW(speedKmh);
    },
    offW,
  };
}

const faradPerMicrofarad = 1e-6;

/** What the converter would draw from the hub if it took all, at a speed in km/h. */
function availableFrom(hub: HubModel, converter: ConverterModel): (speedKmh: number) => Drawn {
  if (hub.power.as === 'curve') return measured(hub.power, converter.efficiency);
  const { ratedW } = hub.power;
  const alternator = fittedAlternator(ratedW, hub.ratedCircumferenceM);
  const seriesF = converter.seriesCapacitorUF * faradPerMicrofarad;
  return (speedKmh) =>
    drawnW(
      electricalRadPerS(speedKmh, hub.wheelCircumferenceM, alternator),
      converter.load,
      ratedLoadOhm(ratedW),
      alternator,
      seriesF,
    );
}

/** Winding loss of a hub of which only a curve is known: that of the reference generator at its rated load, 12 of 15 ohm. */
const measuredWindingEfficiency = 0.8;

/** The rider's own curve, from nothing at rest; level beyond its last point. Load and capacitor are in it already. */
function measured(
  { points, readAt }: Extract<HubPower, { as: 'curve' }>,
  efficiency: number,
): (speedKmh: number) => Drawn {
  const read = points.map(({ speedKmh, powerW }) => ({ x: speedKmh, y: powerW }));
  const curve = monotoneCurve(points[0]!.speedKmh > 0 ? [{ x: 0, y: 0 }, ...read] : read);
  const perRead = readAt === 'plug' ? 1 / efficiency : 1;
  return (speedKmh) => ({
    electricalW: curve(speedKmh) * perRead,
    windingEfficiency: measuredWindingEfficiency,
  });
}

const slowKmh = 10;
const fastKmh = 30;

/** Drag of the hub with nothing connected, W: k1 v + k2 v^2 through its values at 10 and 30 km/h, never below 0. */
function idleDrag({ idleDragW10, idleDragW30 }: HubModel): (speedKmh: number) => number {
  const slow = slowKmh * msPerKmh;
  const fast = fastKmh * msPerKmh;
  const quadratic = (idleDragW30 / fast - idleDragW10 / slow) / (fast - slow);
  const linear = idleDragW10 / slow - quadratic * slow;
  return (speedKmh) => {
    const speedMs = speedKmh * msPerKmh;
    return Math.max(0, linear * speedMs + quadratic * speedMs ** 2);
  };
}
