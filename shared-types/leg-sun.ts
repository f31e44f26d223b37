import { z } from 'zod';
import type { Band } from './comparison.ts';
import { id } from './field.ts';

/** How the panels lie for a look at a leg's sun: all day flat or aimed in the open, or as a scenario places them. */
export const lying = z.discriminatedUnion(
  'as',
  [
    z.strictObject({ as: z.literal('flat') }),
    z.strictObject({ as: z.literal('aimed') }),
    z.strictObject({ as: z.literal('scenario'), scenarioId: id }),
  ],
  { error: 'flat, aimed, or as in a scenario' },
);
export type Lying = z.infer<typeof lying>;

/** The days of the leg, or the year's months as if the leg were ridden in each. */
export const sunBy = z.enum(['day', 'month'], { error: 'one of: day, month' });
export type SunBy = z.infer<typeof sunBy>;

/** An expected amount with the band of 80 in 100 histories. */
export interface Expected {
  readonly mean: number;
  readonly band: Band;
}

/** Sunrise and sunset on the rider's clock (local mean solar time), upper edge of the sun and refraction counted. */
export type SunUp =
  | { readonly as: 'rises'; readonly riseH: number; readonly setH: number }
  | { readonly as: 'up' }
  | { readonly as: 'down' };

/** One day of the leg, or the middle of one month of the year. */
export interface SunPeriod {
  readonly date: string;
  readonly sun: SunUp;
  /** Global radiation on a horizontal plane, kWh/m2 a day. */
  readonly radiationKWhM2: Expected;
  /** Mean daily minimum and maximum of the air at the leg's height. */
  readonly minDegC: number;
  readonly maxDegC: number;
}

/** What one panel gives at its plug, Wh a day. */
export interface PanelSun {
  readonly itemId: string;
  readonly label: string;
  /** One a period, in their order. */
  readonly periods: readonly Expected[];
  /** Over the days of the leg: 90, 50 and 10 of 100 days give less. */
  readonly goodDayWh: number;
  readonly usualDayWh: number;
  readonly dullDayWh: number;
  /** Mean day of a week so dull that nine of ten weeks are brighter. */
  readonly dullWeekWh: number;
}

/** The station a leg takes its climate from. */
export interface LegStation {
  readonly place: string;
  readonly country: string;
  readonly km: number;
  /** Height of the station less that of the leg, m. */
  readonly higherM: number;
  /** Codes of where its figures come from. */
  readonly source: string;
  /** The station that gives the temperatures, when this one has none. */
  readonly temperaturesFrom: string | null;
}

/** The sun of one leg of a tour. */
export interface LegSun {
  readonly leg: string;
  readonly station: LegStation;
  readonly periods: readonly SunPeriod[];
  readonly panels: readonly PanelSun[];
  /** Light on an aimed panel over light on a flat one, all day, over the leg; null when the sun stays down. */
  readonly aimedOverFlat: number | null;
  /** What the rider should know before trusting the figures. */
  readonly notes: readonly string[];
  readonly histories: number;
}
