import type { Money } from '../../../shared-types/money.ts';
import type { MoneySettings } from '../../../shared-types/money-settings.ts';

/** One line of a kit with its prices. */
export interface PricedLine {
  readonly itemId: string;
  readonly label: string;
  /** How many are carried, and how many of these the rider owns already. */
  readonly carried: number;
  readonly owned: number;
  /** Of one. */
  readonly price: Money;
  /** What it takes to fit one (a hub: its rim, its spokes and their building). */
  readonly building: readonly Money[];
  /** What one fetches when it is done with; null where that is not known. */
  readonly resale: Money | null;
  /** Years of use of one, above 0. */
  readonly lifeYears: number;
}

/** What the money of a kit is reckoned with. */
export interface MoneyGround {
  /** The rider's currency. */
  readonly currency: string;
  readonly money: MoneySettings;
}

/** What `count` pieces are bought for, with their fitting. */
export function pricesOf(line: PricedLine, count: number): readonly Money[] {
  return timesOf([line.price, ...line.building], count);
}

/** The fitting of `count` pieces. */
export function buildingOf(line: PricedLine, count: number): readonly Money[] {
  return timesOf(line.building, count);
}

/** What `count` pieces fetch in the end; nothing where that is not known. */
export function resaleOf(line: PricedLine, count: number): readonly Money[] {
  return line.resale === null ? [] : timesOf([line.resale], count);
}

function timesOf(amounts: readonly Money[], count: number): readonly Money[] {
  return amounts.map((amount) => ({ ...amount, minor: amount.minor * count }));
}
