import type { HubLoad, HubPower } from '../../../shared-types/hub-item.ts';
import {
  drawnW,
  electricalRadPerS,
  fittedAlternator,
  nothingDrawn,
  ratedLoadOhm,
  type Drawn,
} from './alternator.ts';
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
 * than it can pass on, and nothing below its start.
 *
 * @param converter null: the hub only turns
 */
export function generatorWheel(hub: HubModel, converter: ConverterModel | null): GeneratorWheel {
  const offW = idleDrag(hub);
  if (converter === null) return { startSpeedKmh: null, plugW: () => 0, onW: offW, offW };
  const { drawn, startSpeedKmh } = drawFrom(hub, converter);
  const taken = (speedKmh: number): Drawn => (speedKmh < startSpeedKmh ? nothingDrawn : drawn(speedKmh));
  return {
    startSpeedKmh,
    plugW: (speedKmh) => taken(speedKmh).electricalW * converter.efficiency,
    onW: (speedKmh) => {
      const { electricalW, windingEfficiency } = taken(speedKmh);
      return electricalW / windingEfficiency + offW(speedKmh);
    },
    offW,
  };
}

/** What a converter draws from a hub once it has started, by speed in km/h. */
interface Draw {
  readonly drawn: (speedKmh: number) => Drawn;
  readonly startSpeedKmh: number;
}

const faradPerMicrofarad = 1e-6;

function drawFrom(hub: HubModel, converter: ConverterModel): Draw {
  const { efficiency, startSpeedKmh, outputW, load } = converter;
  const mostW = outputW / efficiency;
  if (hub.power.as === 'curve') return measured(hub.power, converter, mostW);
  const { ratedW } = hub.power;
  const alternator = fittedAlternator(ratedW, hub.ratedCircumferenceM);
  const seriesF = converter.seriesCapacitorUF * faradPerMicrofarad;
  const ratedOhm = ratedLoadOhm(ratedW);
  const radPerS = (speedKmh: number): number =>
    electricalRadPerS(speedKmh, hub.wheelCircumferenceM, alternator);
  return {
    drawn: (speedKmh) => drawnW(radPerS(speedKmh), load, ratedOhm, alternator, seriesF, mostW),
    startSpeedKmh,
  };
}

/** Winding loss of a hub of which only a curve is known: that of the reference generator at its rated load, 12 of 15 ohm. */
export const measuredWindingEfficiency = 0.8;

/**
 * The rider's own curve, from nothing at rest; level beyond its last point. Load and capacitor are in it already, and in one
 * read at the plug also what the converter starts at and gives at most.
 */
function measured(
  { points, readAt }: Extract<HubPower, { as: 'curve' }>,
  { efficiency, startSpeedKmh }: ConverterModel,
  mostW: number,
): Draw {
  const read = points.map(({ speedKmh, powerW }) => ({ x: speedKmh, y: powerW }));
  const curve = monotoneCurve(points[0]!.speedKmh > 0 ? [{ x: 0, y: 0 }, ...read] : read);
  const atPlug = readAt === 'plug';
  return {
    drawn: (speedKmh) => ({
      electricalW: atPlug ? curve(speedKmh) / efficiency : Math.min(curve(speedKmh), mostW),
      windingEfficiency: measuredWindingEfficiency,
    }),
    startSpeedKmh: atPlug ? firstSpeedKmh(points) : startSpeedKmh,
  };
}

/** Where a curve leaves zero. */
function firstSpeedKmh(points: Extract<HubPower, { as: 'curve' }>['points']): number {
  const first = points.findIndex(({ powerW }) => powerW > 0);
  return first < 0 ? points.at(-1)!.speedKmh : (points[first - 1]?.speedKmh ?? 0);
}

const slowKmh = 10;
const fastKmh = 30;

/**
 * Drag of the hub with nothing connected, W, through its values at 10 and 30 km/h: k1 v + k2 v^2, hysteresis and eddy currents.
 * Where that would bend down, below threefold at three times the speed, a power of the speed that never falls.
 */
function idleDrag({ idleDragW10, idleDragW30 }: HubModel): (speedKmh: number) => number {
  const slow = slowKmh * msPerKmh;
  const fast = fastKmh * msPerKmh;
  const quadratic = (idleDragW30 / fast - idleDragW10 / slow) / (fast - slow);
  if (quadratic < 0) {
    const exponent = Math.max(0, Math.log(idleDragW30 / idleDragW10) / Math.log(fastKmh / slowKmh));
    return (speedKmh) => idleDragW10 * (speedKmh / slowKmh) ** exponent;
  }
  const linear = idleDragW10 / slow - quadratic * slow;
  return (speedKmh) => {
    const speedMs = speedKmh * msPerKmh;
    return Math.max(0, linear * speedMs + quadratic * speedMs ** 2);
  };
}
