import type {
  Comparison,
  EnergyMargin,
  FirstShort,
  FlatRisk,
  ScoredRow,
} from '../../../shared-types/comparison.ts';
import type { ItemKind } from '../../../shared-types/item.ts';
import { moneyText, percent, wordsLocale } from '../../../shared-types/figures.ts';
import { ofHundred } from '../../../shared-types/history-words.ts';
import type { Money } from '../../../shared-types/money.ts';

/** What the sentences are written from. */
export interface AdvisedScenario {
  readonly id: string;
  readonly label: string;
  readonly toBuy: Money;
  readonly notConverted: readonly Money[];
  readonly carriedG: number;
  readonly frontWheelG: number;
  readonly margin: EnergyMargin;
  readonly risk: FlatRisk;
  readonly firstShort: FirstShort | null;
  readonly spilledShare: number;
  /** Most days between nights with a wall; the days of the tour when it needs none on the way. */
  readonly daysWithoutWall: number;
  /** Kinds of what is still to be bought. */
  readonly kindsToBuy: readonly ItemKind[];
}

/** How many histories were drawn, and in how many of them a margin is to hold. */
export type Drawn = Pick<Comparison, 'histories' | 'confidence'>;

/** What else the sentences know of the comparison. */
export type Situation = Pick<Comparison, 'histories' | 'confidence' | 'remedies' | 'ownsNoKit'> & {
  readonly tour: Pick<Comparison['tour'], 'days'>;
};

/** A scenario with its place in the ranking. */
export interface Standing {
  readonly row: ScoredRow;
  readonly scenario: AdvisedScenario;
}

/** `90 of 100 histories`. */
export function mostHistories({ confidence }: Drawn): string {
  return `${ofHundred(confidence, wordsLocale)} histories`;
}

export function inPercent(share: number): string {
  return percent(share, { locale: wordsLocale });
}

export function inMoney(value: Money): string {
  return moneyText(value, wordsLocale);
}
