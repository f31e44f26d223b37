import type { Band } from './comparison.ts';
import type { GradeShare } from './track.ts';

/** One day of a leg on the road. */
export interface RideDay {
  readonly date: string;
  readonly km: number;
  readonly speedKmh: number;
  /** At the converter's plug; 0 without a hub that gives USB power. */
  readonly hubWh: number;
}

/** Share of the riding time from one speed to below another; all bands are equally wide. */
export interface SpeedShare {
  readonly fromKmh: number;
  readonly toKmh: number;
  readonly share: number;
}

/** What a hub gives and takes at one speed. */
export interface HubPoint {
  readonly speedKmh: number;
  /** At the converter's plug, W. */
  readonly plugW: number;
  /** Mechanical drag, W: charging, and switched off. */
  readonly onW: number;
  readonly offW: number;
}

/** What the hub of a scenario does on a leg. */
export interface LegHub {
  readonly label: string;
  /** null: nothing takes its power, so it only turns. */
  readonly converter: string | null;
  readonly meanWhADay: number;
  /** Of the days of the leg, where these differ: 10, 50 and 90 of 100 give less; null where all are alike. */
  readonly daysWh: (Band & { readonly p50: number }) | null;
  /** While riding, at the plug. */
  readonly meanW: number;
  readonly startSpeedKmh: number | null;
  /** Share of the riding time at or above the start speed. */
  readonly aboveStartShare: number;
  readonly curve: readonly HubPoint[];
  /** Days of the leg on which the hub alone gives less than `needWhADay`. */
  readonly shortDays: number;
}

/** Mean moving speed, and how much later than without any of the kit the day's distance is done. */
export interface Pace {
  readonly speedKmh: number;
  readonly kmADay: number;
  readonly laterMinADay: number;
}

/** Where the power goes, W, means over the riding time; `riderW` is the sum of the others. Slope is below 0 where a leg falls more than it climbs. */
export interface RidePower {
  readonly riderW: number;
  readonly airW: number;
  readonly rollingW: number;
  readonly slopeW: number;
  readonly hubW: number;
  /** Bearings and chain. */
  readonly frictionW: number;
  readonly brakesW: number;
}

/** A leg as it is ridden under one scenario. */
export interface LegRide {
  readonly leg: string;
  readonly scenario: string;
  readonly ridingHours: number;
  readonly kitG: number;
  /** Without the kit; with its mass on a plain wheel; with the hub switched off; with the hub charging. */
  readonly bare: Pace;
  readonly loaded: Pace;
  readonly off: Pace | null;
  readonly on: Pace | null;
  readonly hub: LegHub | null;
  readonly power: RidePower;
  /** What must come out of the hub's plug on a mean day of the tour for all the devices ask for, Wh: losses in chargers and bank counted. */
  readonly needWhADay: number;
  readonly days: readonly RideDay[];
  readonly speeds: readonly SpeedShare[];
  /** The distance by grade, steepest descent first. */
  readonly grades: readonly GradeShare[];
  /** Share of the riding time spent pushing the bicycle, and braking at the fastest downhill. */
  readonly pushingShare: number;
  readonly brakingShare: number;
  /** What the rider should know before trusting the figures. */
  readonly notes: readonly string[];
}
