import type { Course, Way } from './course.ts';
import type { GeneratorWheel } from './hub.ts';
import type { RideModel } from './power-balance.ts';
import { meanPowerSplit, type PowerSplit } from './power-split.ts';
import { walkingKmh } from './solve-speed.ts';
import { chargingShares, solveWays, type Rider } from './solve-ways.ts';
import { splitByTime, type RiddenPiece, type Stage } from './stages.ts';

/** Who rides a leg, and on what. */
export interface Ride extends Rider {
  /** With the mass of the kit compared. */
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
  /** Share of the riding time in which the converter is at or above its start, so that the hub charges. */
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
  const { ways } = course;
  const km = kmByWay(course);
  const bareHours = totalHours(km, solveWays(ways, ride, bare));
  const paceOf = (speedKmh: Float64Array): Pace => {
    const hours = totalHours(km, speedKmh);
    return { speedKmh: sum(km) / hours, laterShare: hours / bareHours - 1 };
  };
  const plain = solveWays(ways, ride, loaded);
  const on = wheel === null ? null : solveWays(ways, ride, loaded, wheel.onW);
  const speedKmh = on ?? plain;
  return {
    km: sum(km),
    bare: { speedKmh: sum(km) / bareHours, laterShare: 0 },
    loaded: paceOf(plain),
    off: wheel === null ? null : paceOf(solveWays(ways, ride, loaded, wheel.offW)),
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
  const { ways } = course;
  const hours = km.map((each, way) => each / speedKmh[way]!);
  const shareWhere = shareOfTime(hours);
  const charging =
    wheel === null ? new Float64Array(ways.length) : chargingShares(ways, ride, loaded, wheel, speedKmh);
  const plugW = charging.map(
    (share, way) => share * (wheel?.plugW(atLeastStart(wheel, speedKmh[way]!)) ?? 0),
  );
  const dragW = charging.map((share, way) => (wheel === null ? 0 : dragOf(wheel, speedKmh[way]!, share)));
  return {
    speedKmh,
    hours,
    power: meanPowerSplit(ways, loaded, speedKmh, hours, dragW),
    plugW: sum(plugW.map((watts, way) => watts * hours[way]!)) / sum(hours),
    aboveStartShare: shareWhere((way) => charging[way]!),
    pushingShare: shareWhere((way) => (pushes(ways[way]!, speedKmh[way]!) ? 1 : 0)),
    brakingShare: shareWhere((way) => (brakes(ways[way]!, loaded, speedKmh[way]!) ? 1 : 0)),
    stages: splitByTime(riddenPieces(course, speedKmh, plugW), days),
  };
}

/** A speed held at the converter's start ends a hair below it. */
function atLeastStart({ startSpeedKmh }: GeneratorWheel, kmh: number): number {
  return Math.max(kmh, startSpeedKmh ?? 0);
}

/** Drag of a hub that charges for a share of the time, W. */
function dragOf(wheel: GeneratorWheel, kmh: number, share: number): number {
  const off = wheel.offW(kmh);
  return share === 0 ? off : off + share * (wheel.onW(atLeastStart(wheel, kmh)) - off);
}

/** Speeds that were recorded were chosen: only solved ones are pushed, or held at the fastest downhill. */
function pushes({ recordedKmh }: Way, kmh: number): boolean {
  return recordedKmh === null && kmh <= walkingKmh;
}

function brakes({ recordedKmh }: Way, { downhillCapKmh }: RideModel, kmh: number): boolean {
  return recordedKmh === null && kmh >= downhillCapKmh;
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

/** Share of the riding time, a way counted for as much of it as `part` says, 0..1. */
function shareOfTime(hours: Float64Array): (part: (way: number) => number) => number {
  const all = sum(hours);
  return (part) => sum(hours.map((each, way) => each * part(way))) / all;
}

function totalHours(km: Float64Array, speedKmh: Float64Array): number {
  return km.reduce((total, each, way) => total + each / speedKmh[way]!, 0);
}

function sum(values: Float64Array): number {
  return values.reduce((total, value) => total + value, 0);
}
