import type { Course } from './course.ts';
import type { GeneratorWheel } from './hub.ts';
import type { RideModel } from './power-balance.ts';
import { meanPowerSplit, type PowerSplit } from './power-split.ts';
import { asRecordedKmh, noDrag, steadySpeedKmh, walkingKmh, type DragAtSpeed } from './solve-speed.ts';
import { splitByTime, type RiddenPiece, type Stage } from './stages.ts';

/** Who rides a leg, and on what. */
export interface Ride {
  /** Power at the pedals, W. */
  readonly riderW: number;
  /** Without the kit compared, and with its mass. */
  readonly bare: RideModel;
  readonly loaded: RideModel;
  /** The kit's generator wheel; null for a plain one. */
  readonly wheel: GeneratorWheel | null;
}

/** How long a course takes. */
export interface Pace {
  readonly speedKmh: number;
  /** Time more than without the kit, as a share of the time without it. Below 0 where its mass helps more downhill. */
  readonly laterShare: number;
}

/** A course ridden under one kit. */
export interface RiddenCourse {
  readonly km: number;
  readonly bare: Pace;
  readonly loaded: Pace;
  /** With the hub switched off and charging; null without a hub. */
  readonly off: Pace | null;
  readonly on: Pace | null;
  /** As ridden: charging where there is a hub. Speed and hours by way of the course. */
  readonly speedKmh: Float64Array;
  readonly hours: Float64Array;
  /** Where the power goes, means over the riding time. */
  readonly power: PowerSplit;
  /** Mean power at the plug while riding, W; 0 without hub or converter. */
  readonly plugW: number;
  /** Share of the riding time at or above the converter's start speed. */
  readonly aboveStartShare: number;
  readonly pushingShare: number;
  readonly brakingShare: number;
  /** Equal parts of the riding time, in the order of the ride. */
  readonly stages: readonly Stage[];
}

/**
 * Rides a course at steady rider power: a speed for each way, the time it takes, and what the hub gives over that time. The
 * drag of the hub and the speed are solved together.
 *
 * @param days how many stages of equal riding time
 */
export function rideCourse(course: Course, ride: Ride, days: number): RiddenCourse {
  const { bare, loaded, wheel } = ride;
  const km = kmByWay(course);
  const bareHours = totalHours(km, solveWays(course, ride, bare));
  const paceOf = (speedKmh: Float64Array): Pace => {
    const hours = totalHours(km, speedKmh);
    return { speedKmh: sum(km) / hours, laterShare: hours / bareHours - 1 };
  };
  const plain = solveWays(course, ride, loaded);
  const on = wheel === null ? null : solveWays(course, ride, loaded, wheel.onW);
  const speedKmh = on ?? plain;
  return {
    km: sum(km),
    bare: { speedKmh: sum(km) / bareHours, laterShare: 0 },
    loaded: paceOf(plain),
    off: wheel === null ? null : paceOf(solveWays(course, ride, loaded, wheel.offW)),
    on: on === null ? null : paceOf(on),
    ...asRidden(course, ride, km, speedKmh, days),
  };
}

type AsRidden = Omit<RiddenCourse, 'km' | 'bare' | 'loaded' | 'off' | 'on'>;

function asRidden(
  course: Course,
  ride: Ride,
  km: Float64Array,
  speedKmh: Float64Array,
  days: number,
): AsRidden {
  const { loaded, wheel } = ride;
  const hours = km.map((each, way) => each / speedKmh[way]!);
  const shareWhere = shareOfTime(speedKmh, hours);
  const start = wheel?.startSpeedKmh ?? null;
  const plugW = speedKmh.map((kmh) => wheel?.plugW(kmh) ?? 0);
  return {
    speedKmh,
    hours,
    power: meanPowerSplit(course.ways, loaded, speedKmh, hours, wheel?.onW ?? noDrag),
    plugW: sum(plugW.map((watts, way) => watts * hours[way]!)) / sum(hours),
    aboveStartShare: start === null ? 0 : shareWhere((kmh) => kmh >= start),
    pushingShare: shareWhere((kmh) => kmh <= walkingKmh),
    brakingShare: shareWhere((kmh, way) => brakes(course, ride, kmh, way)),
    stages: splitByTime(riddenPieces(course, speedKmh, plugW), days),
  };
}

/** Speeds that were recorded were chosen: only solved ones are held at the fastest downhill. */
function brakes({ ways }: Course, { loaded }: Ride, kmh: number, way: number): boolean {
  return ways[way]!.recordedKmh === null && kmh >= loaded.downhillCapKmh;
}

function solveWays(
  { ways }: Course,
  { riderW, bare }: Ride,
  as: RideModel,
  dragW?: DragAtSpeed,
): Float64Array {
  return Float64Array.from(ways, (way) =>
    way.recordedKmh === null
      ? steadySpeedKmh(riderW, way, as, dragW)
      : as === bare
        ? way.recordedKmh
        : asRecordedKmh(way.recordedKmh, way, bare, as, dragW),
  );
}

function kmByWay({ ways, pieces }: Course): Float64Array {
  const km = new Float64Array(ways.length);
  for (const { parts } of pieces) for (const part of parts) km[part.way]! += part.km;
  return km;
}

function riddenPieces({ pieces }: Course, speedKmh: Float64Array, plugW: Float64Array): RiddenPiece[] {
  return pieces.map(({ parts }) => {
    const total = { km: 0, hours: 0, plugWh: 0 };
    for (const { way, km } of parts) {
      const hours = km / speedKmh[way]!;
      total.km += km;
      total.hours += hours;
      total.plugWh += hours * plugW[way]!;
    }
    return total;
  });
}

function shareOfTime(
  speedKmh: Float64Array,
  hours: Float64Array,
): (holds: (kmh: number, way: number) => boolean) => number {
  const all = sum(hours);
  return (holds) => sum(hours.map((each, way) => (holds(speedKmh[way]!, way) ? each : 0))) / all;
}

function totalHours(km: Float64Array, speedKmh: Float64Array): number {
  return km.reduce((total, each, way) => total + each / speedKmh[way]!, 0);
}

function sum(values: Float64Array): number {
  return values.reduce((total, value) => total + value, 0);
}
