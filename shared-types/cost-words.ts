import type { PaidNights } from './comparison.ts';
import { amount, formatNumber, moneyText } from './figures.ts';
import type { Money } from './money.ts';

/** The lines of a cell whose head names the currency: the amount in it, then each in another one. */
export function amountLines(total: Money, apart: readonly Money[], locale?: string): readonly string[] {
  return [amount(total, locale), ...apart.map((other) => `and ${moneyText(other, locale)}`)];
}

/** The same for what the kit fetches in the end; nobody may have said. */
export function resaleLines(total: Money, apart: readonly Money[], locale?: string): readonly string[] {
  return total.minor === 0 && apart.length === 0 ? ['not known'] : amountLines(total, apart, locale);
}

/** Nights that must have a wall, and what they cost in the currency of their price. */
export function paidNightLines(paid: PaidNights | null, locale?: string): readonly string[] {
  if (paid === null) return ['every night is not enough'];
  if (paid.nights === 0) return ['none'];
  const count = `${formatNumber(paid.nights, { locale })} ${paid.nights === 1 ? 'night' : 'nights'}`;
  return [count, paid.cost === null ? 'no price set' : moneyText(paid.cost, locale)];
}
