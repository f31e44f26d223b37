import type { Criterion } from './settings.ts';
import type { Money } from './money.ts';
import type { ItemKind } from './item.ts';
import type { Mount } from './item-common.ts';
import type { Method } from './scenario.ts';

/** 10 and 90 of 100 histories; null while a single mean history is drawn. */
export interface Band {
  readonly p10: number;
  readonly p90: number;
}

/** Which device ran flat first, and on which day of the tour (1 is the first). */
export interface Shortfall {
  readonly device: string;
  readonly day: number;
}

/**
 * The largest factor by which all use can grow with no must-have flat, less 1: 0.31 is +31 %.
 * `capped` when even the largest factor tried is carried; `limitedBy` is then null.
 */
export interface EnergyMargin {
  readonly value: number;
  readonly band: Band | null;
  readonly capped: boolean;
  readonly limitedBy: Shortfall | null;
}

export interface CostLine {
  readonly itemId: string;
  readonly label: string;
  readonly quantity: number;
  readonly owned: boolean;
  /** The whole price of the line, wheel building included. */
  readonly whole: Money;
}

/** To buy now: owned items cost nothing. Amounts in another currency are named, never converted. */
export interface Cost {
  readonly toBuy: Money;
  readonly whole: Money;
  readonly notConverted: readonly Money[];
  readonly lines: readonly CostLine[];
}

export interface MassLine {
  readonly itemId: string;
  readonly label: string;
  readonly kind: ItemKind;
  readonly quantity: number;
  readonly mount: Mount;
  /** Net of what the item replaces. */
  readonly netG: number;
  readonly frontWheelG: number;
}

export interface Mass {
  readonly carriedG: number;
  readonly frontWheelG: number;
  readonly lines: readonly MassLine[];
}

/** Energy of one day, Wh at the plug: in = stored + used + lost + spilled. */
export interface DayLedger {
  readonly day: number;
  readonly date: string;
  /** What the devices ask for. */
  readonly demand: number;
  readonly used: number;
  readonly unserved: number;
  readonly wall: number;
  readonly panel: number;
  readonly hub: number;
  readonly lost: number;
  readonly spilled: number;
  /** Change of everything stored over the day. */
  readonly stored: number;
}

/** Stored energy of all banks and devices together, one figure an hour. */
export interface StoredCourse {
  readonly capacityWh: number;
  readonly middleWh: readonly number[];
  readonly lowWh: readonly number[] | null;
  readonly highWh: readonly number[] | null;
}

/** What the sun gives the panel and the wheel the hub, per leg, a mean day. */
export interface LegYield {
  readonly leg: string;
  readonly days: number;
  readonly station: string;
  readonly stationKm: number;
  /** Height of the station less that of the leg, m. */
  readonly stationHigherM: number;
  /** What the rider should know before trusting the leg's sun. */
  readonly notes: readonly string[];
  readonly radiationKWhM2: number;
  readonly dayLengthH: number;
  readonly panelWh: number;
  readonly hubWh: number;
  readonly wallNights: number;
  /** As ridden with the kit, its hub charging. */
  readonly speedKmh: number;
  /** How much later the day's distance is done, min: by the kit's mass, and by the drag of its hub charging or switched off. */
  readonly massMinutes: number;
  readonly dragMinutes: number;
  readonly offMinutes: number;
}

/** One figure the answer rests on, for the list of assumptions. */
export interface Assumption {
  readonly name: string;
  readonly value: string;
  readonly basis: 'label' | 'measured' | 'default' | 'rider';
  readonly source: string;
}

/** The four figures of a scenario as the scorecard takes them. */
export type CriterionValues = Readonly<Record<Criterion, number>>;

export interface ScoredRow {
  readonly id: string;
  /** 1 is best; equal scores share a rank. What is unacceptable ranks behind all that is not. */
  readonly rank: number;
  readonly score: number;
  readonly parts: CriterionValues;
  /** Criteria in which the value lies beyond the rider's own "unacceptable". */
  readonly unacceptable: readonly Criterion[];
  /** A scenario at least as good in every criterion and better in one; null when there is none. */
  readonly dominatedBy: string | null;
}

/** One line of what a generator hub really costs. */
export interface HubCostLine {
  readonly part: string;
  /** Of all pieces; null for what only gives grams back. */
  readonly price: Money | null;
  /** Net of what comes off; below 0 for what only comes off. */
  readonly netG: number;
}

/** What a generator hub really costs: the hub, its wheel, converter and cables. */
export interface HubCost {
  readonly lines: readonly HubCostLine[];
  readonly total: Money;
  /** Amounts in another currency, named and never converted. */
  readonly notConverted: readonly Money[];
  readonly netG: number;
  readonly frontWheelG: number;
}

export interface ScenarioResult {
  readonly id: string;
  readonly label: string;
  readonly method: Method;
  /** What it carries, in a line: "20 W panel, 20 Ah bank". */
  readonly carries: string;
  readonly values: CriterionValues;
  readonly cost: Cost;
  readonly mass: Mass;
  /** null without a generator hub. */
  readonly hubCost: HubCost | null;
  readonly margin: EnergyMargin;
  /** Share of histories with a flat must-have at the planned use. */
  readonly flatShare: number;
  readonly firstShort: Shortfall | null;
  /** The least energy stored at any step of the tour at the planned use, Wh. */
  readonly lowestStoredWh: number;
  readonly stored: StoredCourse;
  readonly days: readonly DayLedger[];
  readonly legs: readonly LegYield[];
  readonly assumptions: readonly Assumption[];
}

/** A sentence with the figures it rests on already inside it. */
export interface Advice {
  readonly answer: string;
  readonly why: string;
  readonly notes: readonly string[];
}

export interface Comparison {
  readonly tour: {
    readonly id: string;
    readonly label: string;
    readonly summary: string;
    readonly startDate: string;
    readonly days: number;
    readonly demandWhPerDay: number;
  };
  readonly currency: string;
  readonly histories: number;
  readonly seed: number;
  readonly advice: Advice;
  /** In order of rank. */
  readonly scenarios: readonly ScenarioResult[];
  readonly scores: readonly ScoredRow[];
  readonly assumptions: readonly Assumption[];
  readonly cautions: readonly string[];
}
