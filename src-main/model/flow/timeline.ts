import { nightOf, type NightKind, type Nights } from '../../../shared-types/tour.ts';
import { activities } from '../storage/device.ts';
import {
  activityIndex,
  partAt,
  ridesFrom,
  sampleMinutes,
  type DayPart,
  type StopPlan,
} from './day-schedule.ts';

/** A leg as the timeline needs it. */
export interface LegPlan {
  readonly days: number;
  readonly ridingHours: number;
  readonly stops: readonly StopPlan[];
  readonly nights: Nights;
}

/** Where the rider is in a step: on the road or at a day stop, or in camp by what the night offers. */
export const whereabouts = ['out', 'none', 'electric-post', 'wall'] as const;
export type Whereabouts = (typeof whereabouts)[number];

/** A tour as a row of equal steps. Every array has one entry a step, unless it says otherwise. */
export interface Timeline {
  readonly stepHours: number;
  readonly stepsPerDay: number;
  readonly days: number;
  readonly steps: number;
  readonly leg: Uint16Array;
  /** Share of the step spent in each activity: four entries a step, in the order of `activities`, adding up to 1. */
  readonly activityShare: Float64Array;
  /** 1 where most of the step is riding. */
  readonly riding: Uint8Array;
  /** Where the rider is at the end of the step: index into `whereabouts`. */
  readonly where: Uint8Array;
  /** Outlets within reach in some part of the step, and the hours they are. */
  readonly outlets: Uint8Array;
  readonly outletHours: Float64Array;
  /** Which draw of outlet luck applies; -1 where an outlet is certain. */
  readonly luck: Int32Array;
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
  const nights = legs.flatMap(({ days, nights: ofLeg }) =>
    Array.from({ length: days }, (_, night) => nightOf(ofLeg, night)),
  );
  const steps = dayLegs.length * stepsPerDay;
  const timeline = {
    leg: new Uint16Array(steps),
    activityShare: new Float64Array(steps * activities.length),
    riding: new Uint8Array(steps),
    where: new Uint8Array(steps),
    outlets: new Uint8Array(steps),
    outletHours: new Float64Array(steps),
    luck: new Int32Array(steps).fill(-1),
  };
  const luckChance: number[] = [];
  dayLegs.forEach((legIndex, day) => {
    const leg = legs[legIndex]!;
    fillDay(timeline, {
      first: day * stepsPerDay,
      stepsPerDay,
      legIndex,
      leg,
      luckFrom: luckChance.length,
      nightBefore: day === 0 ? 'wall' : nights[day - 1]!,
      legBefore: day === 0 ? leg : legs[dayLegs[day - 1]!]!,
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
    wallAfterDay: Uint8Array.from(nights, (night) => (night === 'none' ? 0 : 1)),
  };
}

function outletsOfNight({ nights }: LegPlan, night: NightKind): number {
  if (night === 'wall') return nights.wallOutlets;
  return night === 'electric-post' ? nights.postOutlets : 0;
}

interface DayToFill {
  readonly first: number;
  readonly stepsPerDay: number;
  readonly legIndex: number;
  readonly leg: LegPlan;
  readonly luckFrom: number;
  readonly nightBefore: NightKind;
  readonly legBefore: LegPlan;
  readonly nightAfter: NightKind;
}

type Filled = Pick<
  Timeline,
  'leg' | 'activityShare' | 'riding' | 'where' | 'outlets' | 'outletHours' | 'luck'
>;

function fillDay(timeline: Filled, day: DayToFill): void {
  const stepMinutes = minutesPerDay / day.stepsPerDay;
  const samples = Math.max(1, Math.round(stepMinutes / sampleMinutes));
  for (let i = 0; i < day.stepsPerDay; i += 1) {
    const step = day.first + i;
    timeline.leg[step] = day.legIndex;
    for (let sample = 0; sample < samples; sample += 1) {
      const hour = ((i + (sample + 0.5) / samples) * stepMinutes) / 60;
      addSample(timeline, day, step, hour, samples);
    }
    const ridingShare = timeline.activityShare[step * activities.length + activityIndex('riding')]!;
    timeline.riding[step] = ridingShare > 0.5 ? 1 : 0;
  }
}

function addSample(timeline: Filled, day: DayToFill, step: number, hour: number, samples: number): void {
  const part = partAt(hour, day.leg.ridingHours, day.leg.stops);
  const place = placeAt(day, part, hour);
  timeline.activityShare[step * activities.length + activityIndex(part.activity)]! += 1 / samples;
  timeline.where[step] = whereabouts.indexOf(place.where);
  if (place.outlets === 0) return;
  timeline.outlets[step] = place.outlets;
  timeline.outletHours[step]! += 24 / day.stepsPerDay / samples;
  if (part.stop >= 0) timeline.luck[step] = day.luckFrom + part.stop;
}

function placeAt(
  day: DayToFill,
  part: DayPart,
  hour: number,
): { readonly where: Whereabouts; readonly outlets: number } {
  if (part.stop >= 0) return { where: 'out', outlets: day.leg.stops[part.stop]!.outlets };
  if (!part.inCamp) return { where: 'out', outlets: 0 };
  const beforeRide = hour < ridesFrom;
  const night = beforeRide ? day.nightBefore : day.nightAfter;
  return { where: night, outlets: outletsOfNight(beforeRide ? day.legBefore : day.leg, night) };
}
