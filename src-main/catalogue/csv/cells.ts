import { fromMajor } from '../../../shared-types/money.ts';

/** How the text of a cell becomes a value. */
export type CellReading = 'text' | 'choice' | 'number' | 'flag' | 'money' | 'ports' | 'curve' | 'date';

/** What a file settles for all its cells. */
export interface CellStyle {
  /** 3,85 is a number; only where the comma does not part the columns. */
  readonly decimalComma: boolean;
  readonly currency: string;
}

/**
 * Reads a cell as far as it can. What is not a number, a flag and so on stays text: the schema then refuses it and says
 * what is allowed, so that no limit and no wording is written twice.
 */
export function readCell(text: string, reading: CellReading, style: CellStyle): unknown {
  switch (reading) {
    case 'text':
    case 'date':
      return text;
    case 'choice':
      return text.toLowerCase();
    case 'number':
      return numberOrText(text, style);
    case 'flag':
      return flagOrText(text);
    case 'money':
      return moneyOf(text, style);
    case 'ports':
      return pairs(text).map(([standard, power]) => ({
        standard: standard.toLowerCase(),
        powerW: numberOrText(power, style),
      }));
    case 'curve':
      return pairs(text).map(([speed, power]) => ({
        speedKmh: numberOrText(speed, style),
        powerW: numberOrText(power, style),
      }));
  }
}

const plainNumber = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

function numberOrText(text: string, { decimalComma }: CellStyle): number | string {
  const dotted = decimalComma ? text.replace(',', '.') : text;
  return plainNumber.test(dotted) ? Number(dotted) : text;
}

const flags: ReadonlyMap<string, boolean> = new Map([
  ['yes', true],
  ['true', true],
  ['no', false],
  ['false', false],
]);

function flagOrText(text: string): boolean | string {
  return flags.get(text.toLowerCase()) ?? text;
}

const amountWithCode = /^(.*[\d.,])\s*([a-z]{3})$/i;

/** An amount in the currency of the file, or one with its own code: `120 USD`. */
function moneyOf(text: string, style: CellStyle): { minor: number | string; currency: string } {
  const [, own, code] = amountWithCode.exec(text) ?? [];
  const currency = code?.toUpperCase() ?? style.currency;
  const amount = numberOrText(own ?? text, style);
  return typeof amount === 'number' ? fromMajor(amount, currency) : { minor: amount, currency };
}

/** More than a curve has points: a list cut off here is refused as too long all the same. */
const mostPairs = 100;

/** `pd:30 bc-1.2:7.5` in pairs; a half that is missing is an empty text, for the schema to refuse. */
function pairs(text: string): (readonly [string, string])[] {
  return text.split(/\s+/, mostPairs).map((pair) => {
    const [first = '', second = ''] = pair.split(':');
    return [first, second];
  });
}
