/** What to do at walls and between them, to be read in a tent. All of it is estimates. */
export interface StopRules {
  /** In the order of doing, a sentence or two each. */
  readonly steps: readonly string[];
  /** By kind of bank, as the scenario lists them. */
  readonly banks: readonly BankLights[];
  /** What the must-haves use on a mean day of their hungriest leg, Wh at a bank's plug. */
  readonly mustHaveWhPerDay: number;
  /** That leg. */
  readonly leg: string;
}

/** What the lights of one bank tell. */
export interface BankLights {
  readonly bank: string;
  /** How many of it are carried; the rows are of each. */
  readonly pieces: number;
  /** What a full one gives at its plug, Wh: as measured, or by its label. */
  readonly fullWh: number;
  /** Most lights first; none where it has no lights. */
  readonly rows: readonly LightRow[];
}

/** A number of lights that are lit: it stands for a range. */
export interface LightRow {
  readonly lit: number;
  readonly of: number;
  /** At the plug, from and to. */
  readonly lowWh: number;
  readonly highWh: number;
  /** How long the must-haves run from this bank alone; null where they use nothing. */
  readonly alone: DaysSpan | null;
  /** The same with what panel and hub give on a mean day of that leg; null without either, and where `alone` is. */
  readonly withSources: LastingDays | null;
}

/** Days, from and to. */
export interface DaysSpan {
  readonly lowDays: number;
  readonly highDays: number;
}

/** For so many days; or, by `sources`, for as long as panel and hub give what they do on a mean day, with or without the bank. */
export type LastingDays = ({ readonly as: 'days' } & DaysSpan) | { readonly as: 'sources' };
