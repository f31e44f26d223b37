import { readNumber, type NumberReading, type ReadNumber } from './read-number.ts';
import { converted, quantityOf, tidied, unitNamed, type Quantity, type Unit } from './units.ts';

/** What a field is about: the unit its value is kept in, and the one it shows and takes bare numbers in. */
export interface FieldUnit {
  readonly stored: string | undefined;
  readonly shown: string | undefined;
}

/** What was typed, in the unit it is kept in. */
export interface Understood {
  readonly value: number;
  /** Neither in another unit than the field's nor to be read in two ways, so that there is nothing to explain. */
  readonly plain: boolean;
}

/** A figure and the unit after it; figures of a number are parted by one sign at most. */
const part =
  /([-+\u2212\u2013]?\s?(?:\d+(?:[.,'’\s\u00a0\u202f]\d+)*[.,]?|[.,]\d+))\s*([^\d\s.,+\u2212\u2013-][^\d\s]*)?\s*/uy;
const clock = /^(\d+):([0-5]\d)$/;
const minutesPerHour = 60;

/** Decimals kept of what was typed in another unit: finer than any scale or meter a rider has. */
const keptDecimals: Readonly<Record<string, number>> = {
  g: 2,
  kg: 4,
  m: 3,
  mm: 1,
  km: 3,
  'km/h': 3,
  '°C': 2,
  W: 4,
  Wh: 3,
  mAh: 1,
  V: 3,
  min: 2,
  h: 4,
};

/** The value of a text such as `540`, `1 lb 3 oz`, `1.234,5 g` or `1 h 30 min`; null where it is not understood. */
export function parseQuantity(text: string, unit: FieldUnit, reading: NumberReading = {}): Understood | null {
  const bare = readNumber(withoutOwnUnit(text, unit.shown), reading);
  if (bare !== null) return inOwnUnit(bare, unit);
  const quantity = quantityOf(unit.stored);
  if (quantity === null || unit.stored === undefined) return null;
  const written = parseClock(text, quantity) ?? parseParts(text, quantity, reading);
  return written === null ? null : { value: kept(written, quantity, unit.stored), plain: false };
}

function withoutOwnUnit(text: string, shown: string | undefined): string {
  const given = text.trim();
  const own = shown !== undefined && given.toLowerCase().endsWith(shown.toLowerCase());
  return own ? given.slice(0, -shown.length) : given;
}

function inOwnUnit({ value, ambiguous }: ReadNumber, { stored, shown }: FieldUnit): Understood {
  const inStored = stored === shown ? value : rounded(converted(value, shown, stored), stored);
  return { value: inStored, plain: !ambiguous };
}

/** Hours and minutes as a clock writes them, min. */
function parseClock(text: string, quantity: Quantity): number | null {
  const [, hours, minutes] = clock.exec(text.trim()) ?? [];
  if (quantity !== 'time' || hours === undefined || minutes === undefined) return null;
  return Number(hours) * minutesPerHour + Number(minutes);
}

interface Part {
  readonly value: number;
  readonly unit: Unit;
}

/** The sum of figures with units, the largest first, in the quantity's common unit. */
function parseParts(text: string, quantity: Quantity, reading: NumberReading): number | null {
  const parts = splitParts(text.trim(), quantity, reading) ?? [];
  const [first, ...rest] = parts;
  if (first === undefined || (rest.length > 0 && !addsUp(parts, quantity))) return null;
  const size = parts.reduce((sum, { value, unit }) => sum + Math.abs(value) * unit.factor, 0);
  return (first.value < 0 ? -size : size) + first.unit.zero;
}

/** Whether only the first has a sign and each unit is smaller than the one before; temperatures add up to nothing. */
function addsUp(parts: readonly Part[], quantity: Quantity): boolean {
  const isFalling = parts.every(({ value, unit }, place) => {
    const before = parts[place - 1];
    return before === undefined || (value >= 0 && unit.factor < before.unit.factor);
  });
  return isFalling && quantity !== 'temperature';
}

function splitParts(text: string, quantity: Quantity, reading: NumberReading): readonly Part[] | null {
  const parts: Part[] = [];
  for (let from = 0; from < text.length;) {
    part.lastIndex = from;
    const [whole, figure, symbol] = part.exec(text) ?? [];
    const read = figure === undefined ? null : readNumber(figure, reading);
    const unit = symbol === undefined ? null : unitNamed(quantity, symbol.replace(/\.$/, ''));
    if (whole === undefined || read === null || unit === null) return null;
    parts.push({ value: read.value, unit });
    from += whole.length;
  }
  return parts;
}

function kept(common: number, quantity: Quantity, stored: string): number {
  const unit = unitNamed(quantity, stored);
  return unit === null ? common : rounded(tidied((common - unit.zero) / unit.factor), stored);
}

function rounded(value: number, stored: string | undefined): number {
  const decimals = keptDecimals[stored ?? ''];
  return decimals === undefined ? value : Number(value.toFixed(decimals)) || 0;
}
