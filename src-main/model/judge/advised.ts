import type {
  Comparison,
  EnergyMargin,
  FirstShort,
  FlatRisk,
  ScoredRow,
} from '../../../shared-types/comparison.ts';
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
}

/** How many histories were drawn, and in how many of them a margin is to hold. */
export type Drawn = Pick<Comparison, 'histories' | 'confidence'>;

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
