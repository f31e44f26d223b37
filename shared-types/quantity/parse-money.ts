import { currencyCode, fromMajor, minorDigits, type Money } from '../money.ts';
import { readNumber } from './read-number.ts';

/** An amount as it was understood, in the currency typed with it or else the field's own. */
export interface UnderstoodMoney {
  readonly money: Money;
  /** In the field's own currency, and not to be read in two ways. */
  readonly plain: boolean;
}

const euroSign = '€';
const codeBefore = /^([a-z]{3}|€)\s*(.+)$/iu;
const codeAfter = /^(.+?)\s*([a-z]{3}|€)$/iu;

/** `120`, `120 USD`, `USD 120`, `1.234,50` or `1,234.50`; null for what is no amount in any currency. */
export function parseMoney(text: string, ownCurrency: string, locale?: string): UnderstoodMoney | null {
  const { figure, code } = parted(text.trim());
  const currency = code ?? ownCurrency;
  if (!currencyCode.safeParse(currency).success) return null;
  const digits = minorDigits(currency);
  const read = readNumber(figure, { locale, mostDecimals: digits });
  if (read === null || hasMoreDecimals(read.value, digits)) return null;
  return { money: fromMajor(read.value, currency), plain: !read.ambiguous && currency === ownCurrency };
}

function parted(text: string): { figure: string; code: string | null } {
  const [, code, figure] = codeBefore.exec(text) ?? [];
  if (figure !== undefined && code !== undefined) return { figure, code: codeOf(code) };
  const [, before, after] = codeAfter.exec(text) ?? [];
  if (before !== undefined && after !== undefined) return { figure: before, code: codeOf(after) };
  return { figure: text, code: null };
}

/** The sign of the euro stands for one currency; that of a dollar or a pound does not. */
function codeOf(text: string): string {
  return text === euroSign ? 'EUR' : text.toUpperCase();
}

function hasMoreDecimals(major: number, digits: number): boolean {
  return Number(major.toFixed(digits)) !== major;
}
