import { z } from 'zod';
import type { EnergyMargin } from './comparison.ts';
import { id } from './field.ts';
import { limits } from './limits.ts';
import type { Money } from './money.ts';
import type { Method } from './scenario.ts';

/** The most kits that one search tries: a few minutes of a small computer. */
export const mostKitsSearched = 65_536;

/**
 * The ladder that a searched margin is told by: how far apart its rungs are, in points of the plan, up to which factor of use; the
 * finer, the less there is to spare. The last reaches up to the largest factor that is tried.
 */
export const marginLadder = [
  { upTo: 1, points: 5 },
  { upTo: 2, points: 10 },
  { upTo: Infinity, points: 25 },
] as const;

/** What the rider decides of an item before the search; items not named may be carried or not. */
export const kitChoices = { must: 'Must come', may: 'May come', not: 'Stays out' } as const;
export type KitChoice = keyof typeof kitChoices;

const choice = z.strictObject({
  itemId: id,
  choice: z.enum(['must', 'may', 'not'], { error: 'one of: must, may, not' }),
});

export const kitSearchRequest = z.strictObject({
  tourId: id,
  /** Its placement and rules hold for every kit. */
  scenarioId: id,
  choices: z.array(choice).max(500, { error: 'at most 500 choices' }),
  /** What no kit of the search may pass. */
  limits,
});
export type KitSearchRequest = z.infer<typeof kitSearchRequest>;

export interface FoundItem {
  readonly itemId: string;
  readonly label: string;
  readonly quantity: number;
  readonly owned: boolean;
}

/** A kit that no other beats: none costs and weighs no more and has as much margin, with something better. */
export interface FoundKit {
  readonly items: readonly FoundItem[];
  readonly method: Method;
  readonly toBuy: Money;
  readonly grams: number;
  readonly frontWheelGrams: number;
  /** The highest rung of the ladder that is held, so that equal kits are equal. */
  readonly margin: Pick<EnergyMargin, 'value' | 'capped'>;
}

/** How a kit was settled: by its full margin, or shown to be beaten before that. */
export interface SearchTally {
  readonly kits: number;
  /** Walked to their margin. */
  readonly walked: number;
  /** An item in it does nothing: a smaller kit has the same margin. */
  readonly idleItem: number;
  /** All its supply in one store does not reach what it must pass. */
  readonly tooLittleSupply: number;
  /** Too many histories failed at what it must pass. */
  readonly stoppedEarly: number;
}

export interface KitSearchResult {
  /** By margin, most first; the exact set when complete. */
  readonly kits: readonly FoundKit[];
  readonly tally: SearchTally;
  /** All kits that are allowed are settled. */
  readonly complete: boolean;
  readonly seconds: number;
  readonly confidence: number;
  readonly histories: number;
  /** Items left out because their price is in another currency. */
  readonly otherMoney: readonly string[];
}
