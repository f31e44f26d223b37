/** A number as it was understood. */
export interface ReadNumber {
  readonly value: number;
  /** Another locale would read the same text as another number. */
  readonly ambiguous: boolean;
}

export interface NumberReading {
  /** Whose decimal sign settles what could be either; the system's when left out. */
  readonly locale?: string | undefined;
  /** No number of this sort has more decimals: a sign before three figures parts thousands, then. */
  readonly mostDecimals?: number;
}

const thousandsDigits = 3;
const negative = /^[-\u2212\u2013]/u;
const anySign = /^[-+\u2212\u2013]\s?/u;
const spaces = /[\s\u00a0\u202f'’]/gu;
const groupedBySpaces = /^\d{1,3}(?:[\s\u00a0\u202f'’]\d{3})+(?:[.,]\d*)?$/u;

/** A number with a decimal comma or point, thousands parted or not; null for what is none. */
export function readNumber(text: string, reading: NumberReading = {}): ReadNumber | null {
  const given = text.trim();
  const read = readUnsigned(given.replace(anySign, ''), reading);
  if (read === null || !negative.test(given)) return read;
  // Without the sum, minus zero.
  return { ...read, value: 0 - read.value };
}

function readUnsigned(given: string, reading: NumberReading): ReadNumber | null {
  // Spaces and apostrophes part thousands and nothing else.
  const text = groupedBySpaces.test(given) ? given.replaceAll(spaces, '') : given;
  if (!/^[\d.,]*\d[\d.,]*$/.test(text)) return null;
  const signs = text.match(/[.,]/g) ?? [];
  const [first = '', second] = signs;
  if (second === undefined) return readOneSign(text, first, reading);
  // Of two sorts the last is the decimal sign; of one sort, written twice or more, none is.
  const last = signs.at(-1) ?? '';
  const decimal = first === last ? '' : last;
  return isGrouped(text, first, decimal) ? sure(text, decimal) : null;
}

function readOneSign(text: string, sign: string, { locale, mostDecimals }: NumberReading): ReadNumber {
  if (sign === '' || !isGrouped(text, sign, '')) return sure(text, sign);
  const mayBeDecimal = mostDecimals === undefined || mostDecimals >= thousandsDigits;
  const decimal = mayBeDecimal && decimalSign(locale) === sign ? sign : '';
  return { ...sure(text, decimal), ambiguous: true };
}

function sure(text: string, decimal: string): ReadNumber {
  const whole = decimal === '' ? text.replaceAll(/[.,]/g, '') : text.replaceAll(otherThan(decimal), '');
  return { value: Number(whole.replace(',', '.')), ambiguous: false };
}

function otherThan(decimal: string): string {
  return decimal === '.' ? ',' : '.';
}

/** Whether `group` parts thousands: up to three figures, then threes; or twos before the last three, as in India. */
function isGrouped(text: string, group: string, decimal: string): boolean {
  const whole = decimal === '' ? text : text.slice(0, text.lastIndexOf(decimal));
  const parts = whole.split(group);
  const lengths = parts.slice(1).map(({ length }) => length);
  const middle = lengths.slice(0, -1);
  return (
    parts.every((part) => /^\d+$/.test(part)) &&
    /^[1-9]\d{0,2}$/.test(parts[0] ?? '') &&
    lengths.at(-1) === thousandsDigits &&
    (middle.every((length) => length === thousandsDigits) || middle.every((length) => length === 2))
  );
}

/** The decimal comma or point of a locale. */
export function decimalSign(locale?: string): string {
  const parts = new Intl.NumberFormat(locale, { numberingSystem: 'latn' }).formatToParts(1.5);
  return parts.find(({ type }) => type === 'decimal')?.value ?? '.';
}
