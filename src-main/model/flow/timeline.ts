import type { NightKind } from '../../../shared-types/tour.ts';
import { activityIndex, partAt, ridesFrom, type StopPlan } from './day-schedule.ts';

/** A leg as the timeline needs it. */
export interface LegPlan {
  readonly days: number;
  readonly ridingHours: number;
  readonly stops: readonly StopPlan[];
  /** Kind of each night, repeated over the leg. */
  readonly nightPattern: readonly NightKind[];
  readonly wallOutlets: number;
  readonly postOutlets: number;
}

/** A tour as a row of equal steps. Every array has one entry a step. */
export interface Timeline {
  readonly stepHours: number;
  readonly stepsPerDay: number;
  readonly days: number;
  readonly steps: number;
  readonly leg: Uint16Array;
  /** Index into `activities`. */
  readonly activity: Uint8Array;
  /** Outlets within reach. */
  readonly outlets: Uint8Array;
  /** Which draw of outlet luck applies: an index into a history's `outletShare`; -1 where an outlet is certain. */
  readonly luck: Int32Array;
  /** 1 in camp or in a room, 0 on the way. */
  readonly inCamp: Uint8Array;
  /** Chance of each draw of outlet luck, in order. */
  readonly luckChance: Float64Array;
  readonly legOfDay: Uint16Array;
  /** 1 where the night that follows the day has a wall. */
  readonly wallAfterDay: Uint8Array;
}

const minutesPerDay = 1440;

/**
 * Lays a tour out in steps.
 *
 * The tour starts at home: before the first day's ride there is a wall. The night of a day runs from the end of its ride
 * to the start of the next.
 *
 * @param stepMinutes 5 to 60, a divisor of a day
 */
export function buildTimeline(legs: readonly LegPlan[], stepMinutes: number): Timeline {
  const stepsPerDay = minutesPerDay / stepMinutes;
  const dayLegs = legs.flatMap((leg, index) => Array.from({ length: leg.days }, () => index));
  const nights = legs.flatMap((leg) =>
    Array.from({ length: leg.days }, (_, day) =>
      outletsOfNight(leg, leg.nightPattern[day % leg.nightPattern.length]!),
    ),
  );
  const steps = dayLegs.length * stepsPerDay;
  const timeline = {
    leg: new Uint16Array(steps),
    activity: new Uint8Array(steps),
    outlets: new Uint8Array(steps),
    luck: new Int32Array(steps).fill(-1),
    inCamp: new Uint8Array(steps),
  };
  const luckChance: number[] = [];
  dayLegs.forEach((legIndex, day) => {
    const leg = legs[legIndex]!;
    const nightBefore = day === 0 ? leg.wallOutlets : nights[day - 1]!;
    fillDay(timeline, {
      first: day * stepsPerDay,
      stepsPerDay,
      legIndex,
      leg,
      luckFrom: luckChance.length,
      nightBefore,
      nightAfter: nights[day]!,
    });
    luckChance.push(...leg.stops.map((stop) => stop.chance));
  });
  return {
    ...timeline,
    stepHours: stepMinutes / 60,
    stepsPerDay,
    days: dayLegs.length,
    steps,
    luckChance: Float64Array.from(luckChance),
    legOfDay: Uint16Array.from(dayLegs),
    wallAfterDay: Uint8Array.from(nights, (outlets) => (outlets > 0 ? 1 : 0)),
  };
}

function outletsOfNight(leg: LegPlan, night: NightKind): number {
  if (night === 'wall') return leg.wallOutlets;
  return night === 'electric-post' ? leg.postOutlets : 0;
}

interface DayToFill {
  readonly first: number;
  readonly stepsPerDay: number;
  readonly legIndex: number;
  readonly leg: LegPlan;
  readonly luckFrom: number;
  readonly nightBefore: number;
  readonly nightAfter: number;
}

function fillDay(
  timeline: Pick<Timeline, 'leg' | 'activity' | 'outlets' | 'luck' | 'inCamp'>,
  day: DayToFill,
): void {
  for (let i = 0; i < day.stepsPerDay; i += 1) {
    const hour = ((i + 0.5) * 24) / day.stepsPerDay;
    const step = day.first + i;
    const part = partAt(hour, day.leg.ridingHours, day.leg.stops);
    timeline.leg[step] = day.legIndex;
    timeline.activity[step] = activityIndex(part.activity);
    timeline.inCamp[step] = part.inCamp ? 1 : 0;
    if (part.inCamp) timeline.outlets[step] = hour < ridesFrom ? day.nightBefore : day.nightAfter;
    if (part.stop >= 0) {
      timeline.outlets[step] = day.leg.stops[part.stop]!.outlets;
      timeline.luck[step] = day.luckFrom + part.stop;
    }
  }
}
