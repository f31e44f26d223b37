import type { AirCheck } from './air-check.ts';
import type { LimitName } from './limits.ts';
import type { Criterion } from './settings.ts';
import type { Money } from './money.ts';
import type { ItemKind } from './item.ts';
import type { Mount } from './item-common.ts';
import type { Method, Rules } from './scenario.ts';
import type { StopRules } from './stop-rules.ts';

/** The edges of what varies: 10 and 90 of 100 stay below. */
export interface Band {
  readonly p10: number;
  readonly p90: number;
}

/** A figure of the histories: what 10, 50 and 90 of 100 of them stay below. */
export interface Spread extends Band {
  readonly p50: number;
}

/** Which device runs flat, and on which day of the tour (1 is the first). */
export interface Shortfall {
  readonly device: string;
  readonly day: number;
}

/**
 * The largest factor by which all use can grow with no must-have flat in `confidence` of the histories, less 1: 0.31 is
 * +31 %. `capped` when even the largest factor tried is carried; `limitedBy` is then null.
 */
export interface EnergyMargin {
  readonly value: number;
  readonly capped: boolean;
  /** What would run flat first just above the margin, and when in the middle of the histories that fail there. */
  readonly limitedBy: Shortfall | null;
  /** The margin carried in half of the histories, an estimate from some of them; at least `value`. */
  readonly usual: number;
  readonly usualCapped: boolean;
}

/** How often a must-have runs flat at the planned use, with its 95 % interval (Wilson 1927): all shares 0..1. */
export interface FlatRisk {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** The first must-have to run flat, over the histories in which one does. */
export interface FirstShort extends Shortfall {
  /** The day in the unluckiest of all histories; `day` is the middle one. */
  readonly earliestDay: number;
}

export interface CostLine {
  readonly itemId: string;
  readonly label: string;
  readonly quantity: number;
  readonly owned: boolean;
  /** The whole price of the line, wheel building included. */
  readonly whole: Money;
}

/** Nights of a tour that must have a wall for the plan to be carried, and what they cost. */
export interface PaidNights {
  readonly nights: number;
  /** In the currency of the rider's price of a night; null where the settings hold no price. */
  readonly cost: Money | null;
}

/** Amounts of a cost in other currencies than the rider's, one a currency: named, never converted. */
export interface CostApart {
  readonly building: readonly Money[];
  readonly resale: readonly Money[];
  readonly perTourDay: readonly Money[];
}

/** What a kit costs. */
export interface Cost {
  /** To buy now: owned items cost nothing. */
  readonly toBuy: Money;
  /** Of what is to buy: what it takes to fit it (a hub: rim, spokes and labour). */
  readonly building: Money;
  /** The price of all that is carried, owned or not. */
  readonly whole: Money;
  /** What all that is carried fetches when it is done with, where known; owned or not. */
  readonly resale: Money;
  /**
   * The equivalent annual cost of all that is carried, owned or not, shared among the touring days of a year; rounded to the
   * minor unit, and below 0 where the kit fetches more than it cost.
   */
  readonly perTourDay: Money;
  /** null where even a wall every night does not carry the plan. */
  readonly paidNights: PaidNights | null;
  /** Of what is to buy. */
  readonly notConverted: readonly Money[];
  readonly apart: CostApart;
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

/** Energy of one day, the mean over the histories, Wh at the plug: in = stored + used + lost + spilled. */
export interface DayLedger {
  readonly day: number;
  readonly date: string;
  /** What the devices ask for. */
  readonly demand: number;
  readonly used: number;
  readonly unserved: number;
  /** From walls: straight into devices and into banks together. */
  readonly wall: number;
  readonly wallToBanks: number;
  readonly panel: number;
  readonly hub: number;
  readonly lost: number;
  /** What panel and hub gave and found no room. */
  readonly spilled: number;
  /** Change of everything stored over the day. */
  readonly stored: number;
}

/** One day of one device, the mean over the histories, Wh. What comes in is counted at its plug. */
export interface DeviceDay {
  /** What it asks for. */
  readonly demand: number;
  readonly unserved: number;
  readonly wallDirect: number;
  /** What a bank passed on, by where the bank had it from; `start` was in it when the tour began. */
  readonly wallThroughBank: number;
  readonly panel: number;
  readonly hub: number;
  readonly start: number;
}

export interface DeviceLedger {
  readonly device: string;
  readonly mustHave: boolean;
  readonly days: readonly DeviceDay[];
}

/** Stored energy of all banks and devices together over the tour, at equal steps. */
export interface StoredCourse {
  readonly capacityWh: number;
  readonly pointsPerDay: number;
  /** 10, 50 and 90 of 100 histories, at the end of each step. */
  readonly lowWh: readonly number[];
  readonly middleWh: readonly number[];
  readonly highWh: readonly number[];
}

/** What the other order at a wall would change over the tour, Wh, the mean over the histories; more is above 0. */
export interface WallOrderChange {
  readonly other: Rules['atWall'];
  readonly lostWh: number;
  readonly unservedWh: number;
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
  /** What panel and hub have to give at their plugs, before any of it is spilled: as on the leg's days of the `DayLedger`. */
  readonly panelWh: number;
  readonly hubWh: number;
  readonly wallNights: number;
  /** How often a must-have is flat on some day of this leg, be it the first time on the tour or not. */
  readonly risk: FlatRisk;
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

/** The figures of a scenario as the scorecard takes them; one that is not known is NaN. */
export type CriterionValues = Readonly<Record<Criterion, number>>;

/** A second opinion on the ranking: nearness to the best of every figure, 0..1, and the rank by it. */
export interface Topsis {
  readonly closeness: number;
  /** 1 is best; among what the rider's limits leave, and what is unacceptable behind what is not. */
  readonly rank: number;
}

/** A limit of the rider's that a scenario passes, in words with both figures: `costs 420 EUR, your limit is 300 EUR`. */
export interface Exclusion {
  readonly limit: LimitName;
  readonly text: string;
}

export interface ScoredRow {
  readonly id: string;
  /**
   * 1 is best; equal scores share a rank. What is unacceptable ranks behind all that is not, what is not known behind that, and
   * what a limit leaves out last.
   */
  readonly rank: number;
  readonly score: number;
  /** By criterion that the rider counts: 1 at "fully satisfied", 0 at "unacceptable". */
  readonly parts: Readonly<Partial<Record<Criterion, number>>>;
  /** Criteria in which the value lies beyond the rider's own "unacceptable". */
  readonly unacceptable: readonly Criterion[];
  /** Criteria that count and whose value is not known. */
  readonly notKnown: readonly Criterion[];
  /** Limits that leave it out of the choice; none as a rule. */
  readonly excludedBy: readonly Exclusion[];
  /** A scenario within the limits, at least as good in every criterion that counts and better in one; null when there is none. */
  readonly dominatedBy: string | null;
  /** null for what a limit leaves out: it is no part of the choice. */
  readonly topsis: Topsis | null;
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
  readonly air: AirCheck;
  readonly margin: EnergyMargin;
  readonly risk: FlatRisk;
  /** null when no history has a flat must-have. */
  readonly firstShort: FirstShort | null;
  /** The least energy stored at any step of a history at the planned use, Wh. */
  readonly reserveWh: Spread;
  /** Share of what panel and hub gave that found no room, 0..1; 0 without either. */
  readonly spilledShare: number;
  readonly stored: StoredCourse;
  readonly days: readonly DayLedger[];
  readonly devices: readonly DeviceLedger[];
  /** null where no wall is ever reached, or no bank or no device is charged there. */
  readonly wallOrder: WallOrderChange | null;
  readonly legs: readonly LegYield[];
  readonly stopRules: StopRules;
  readonly assumptions: readonly Assumption[];
}

/** One change that was tried on a scenario, and the energy margin with it. */
export interface Remedy {
  readonly margin: number;
  readonly capped: boolean;
}

/** What would let the nearest scenario carry the plan when none does, each tried alone. */
export interface Remedies {
  readonly scenarioId: string;
  /** One more night with a wall, after a day of the tour; null when every night has one. */
  readonly moreNight: (Remedy & { readonly afterDay: number }) | null;
  /** One more item of the catalogue each, with what it needs to work. */
  readonly items: readonly (Remedy & { readonly label: string })[];
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
  /** No bank, panel, hub, converter or charger is owned yet. */
  readonly ownsNoKit: boolean;
  readonly histories: number;
  readonly seed: number;
  /** Share of the histories that the energy margin is to hold in. */
  readonly confidence: number;
  readonly advice: Advice;
  /** null when a scenario carries the plan. */
  readonly remedies: Remedies | null;
  /** In order of rank. */
  readonly scenarios: readonly ScenarioResult[];
  readonly scores: readonly ScoredRow[];
  readonly assumptions: readonly Assumption[];
  readonly cautions: readonly string[];
}
