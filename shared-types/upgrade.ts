import { z } from 'zod';
import type { FlatRisk } from './comparison.ts';
import { count, id } from './field.ts';
import type { Money } from './money.ts';

/** More would keep the rider waiting for minutes, and read like a list. */
const mostTours = 50;
const mostLines = 20;

const line = z.strictObject({ itemId: id, quantity: count({ label: 'Quantity', min: 1, max: 99 }) });
const lines = z
  .array(line)
  .max(mostLines, { error: `at most ${mostLines} different items` })
  .refine((all) => new Set(all.map(({ itemId }) => itemId)).size === all.length, {
    error: 'each item once, with its quantity',
  });
export type UpgradeLine = z.infer<typeof line>;

/** What is changed: all that the rider owns but devices, or the kit of a scenario with its placement and rules. */
const base = z.discriminatedUnion(
  'as',
  [z.strictObject({ as: z.literal('owned') }), z.strictObject({ as: z.literal('scenario'), scenarioId: id })],
  { error: 'what the rider owns, or the kit of a scenario' },
);
export type UpgradeBase = z.infer<typeof base>;

/** A change of a kit, and the tours it is checked on: all of them when `tourIds` is null. */
export const upgradeQuestion = z.strictObject({
  base,
  add: lines,
  remove: lines,
  tourIds: z.nullable(
    z
      .array(id)
      .min(1, { error: 'at least one tour' })
      .max(mostTours, { error: `at most ${mostTours} tours` }),
  ),
});
export type UpgradeQuestion = z.infer<typeof upgradeQuestion>;

/** A figure with the kit as it is and with the change. */
export interface BeforeAfter<Figure = number> {
  readonly before: Figure;
  readonly after: Figure;
}

/** Two energy margins found on the same histories, and how sure their difference is. Shares: 0.1 is ten points. */
export interface PairedMargin extends BeforeAfter {
  /** The margin is the largest that is tried: the true one lies above it. */
  readonly cappedBefore: boolean;
  readonly cappedAfter: boolean;
  readonly difference: number;
  /** 95 % interval of the difference; it holds `difference`. */
  readonly low: number;
  readonly high: number;
}

/**
 * - helps: a plan that failed is carried, or the rider's scorecard rises clearly
 * - not-enough: better, but the plan is still not carried
 * - no-odds: neither better nor worse by the rider's own weights
 * - hurts: the scorecard falls clearly, a carried plan fails, or a limit of the rider's is passed
 * - not-known: a figure is missing
 */
export type UpgradeEffect = 'helps' | 'not-enough' | 'no-odds' | 'hurts' | 'not-known';

/** Days of touring after which the nights saved have paid for the change; null with the reason in `text`. */
export interface PayBack {
  readonly days: number | null;
  readonly text: string;
}

export interface UpgradeOnTour {
  readonly tourId: string;
  readonly label: string;
  readonly days: number;
  readonly effect: UpgradeEffect;
  /** Why, with the figures it rests on. */
  readonly sentence: string;
  /** The same margin within a point, and the same risk and nights with a wall: the kit might as well be as it was. */
  readonly changesNothing: boolean;
  readonly score: BeforeAfter;
  readonly margin: PairedMargin;
  /** The interval of the difference in words; an interval that holds 0 shows no clear difference. */
  readonly marginText: string;
  readonly risk: BeforeAfter<FlatRisk>;
  /** Histories in which only the kit before, or only the kit after, has a flat must-have. */
  readonly mended: number;
  readonly spoiled: number;
  /** min a day. */
  readonly minutesLost: BeforeAfter;
  /** More use that is carried, Wh a day; below 0 where it is less. */
  readonly extraWhPerDay: number;
  /** For 1 Wh a day more; null where nothing clear is gained, nothing paid, or a part of it in another currency. */
  readonly moneyPerWh: Money | null;
  /** Points of margin for every 100 g more; null where no grams are added. */
  readonly marginPointsPer100g: number | null;
  /** Nights with a wall that the plan needs; null where one every night is not enough. */
  readonly wallNights: BeforeAfter<number | null>;
  readonly payBack: PayBack;
}

/** What a change costs. */
export interface UpgradeMoney {
  /** Below 0 where less is to be bought than before. */
  readonly toBuy: Money;
  /** What the owned things that go out fetch, where known. */
  readonly resale: Money;
  /** Owned things that go out and of which no resale is known: nothing is taken off for them. */
  readonly resaleUnknown: readonly string[];
  /** `toBuy` less `resale`. */
  readonly net: Money;
  /** Amounts in other currencies than the rider's: named, never converted and never counted. */
  readonly apart: { readonly toBuy: readonly Money[]; readonly resale: readonly Money[] };
}

export interface UpgradeVerdict {
  readonly is: 'worth-it' | 'for-some' | 'not-for-these' | 'not-known';
  /** `Worth it`, `Only for A and B`. */
  readonly heading: string;
  /** With the figures it rests on. */
  readonly why: string;
}

/** A change of a kit, checked on every tour asked for. */
export interface Upgrade {
  /** What is changed, in words: `the kit as owned`. */
  readonly base: string;
  /** `20 W panel for the 10 Ah bank`. */
  readonly change: string;
  readonly verdict: UpgradeVerdict;
  readonly money: UpgradeMoney;
  readonly grams: BeforeAfter;
  readonly frontWheelGrams: BeforeAfter;
  readonly tours: readonly UpgradeOnTour[];
  /** What keeps the change from giving what it could. */
  readonly notes: readonly string[];
  /** For the kinds that come in. */
  readonly cautions: readonly string[];
  readonly histories: number;
  /** Share of the histories that a margin is to hold in. */
  readonly confidence: number;
}
