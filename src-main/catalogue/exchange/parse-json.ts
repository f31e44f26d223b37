import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { endOfSense } from './end-of-sense.ts';

/** A catalogue file goes eleven groups and lists deep, to the figures of a track; what goes far deeper is something else. */
const deepest = 32;
/** No group of a catalogue file has nearly as many fields (our choice). */
const widest = 1000;

/** Half of a character, which no database keeps as it is. */
const halfCharacter = /\\u[dD][89a-fA-F]/;

/** The value of a JSON text; where it stops making sense, an answer says where. */
export function parseJson(given: string): Outcome<unknown> {
  const text = given.replace(/^\uFEFF/, '').toWellFormed();
  try {
    const value: unknown = JSON.parse(text, halfCharacter.test(text) ? wholeCharacters : undefined);
    return isUnlikely(value, deepest) ? unlikely : success(value);
  } catch (fault) {
    return fault instanceof RangeError ? unlikely : failure('unreadable', whereBroken(text));
  }
}

const unlikely = failure(
  'unreadable',
  `This is not a Chargewright catalogue file: it has lists within lists more than ${deepest} deep, or a group of more than ` +
    `${formatNumber(widest, { locale: wordsLocale })} fields. Nothing was changed.`,
);

function wholeCharacters(_key: string, value: unknown): unknown {
  return typeof value === 'string' ? value.toWellFormed() : value;
}

/** Whether a value goes too deep or too wide for a catalogue. */
function isUnlikely(value: unknown, levels: number): boolean {
  if (typeof value !== 'object' || value === null) return false;
  if (levels === 0) return true;
  const parts: readonly unknown[] = Array.isArray(value) ? value : Object.values(value);
  const isTooWide = !Array.isArray(value) && parts.length > widest;
  return isTooWide || parts.some((part) => isUnlikely(part, levels - 1));
}

function whereBroken(text: string): string {
  if (text.trim() === '') return 'The file is empty. Nothing was changed.';
  const end = endOfSense(text);
  if (end === text.length)
    return 'The file ends in the middle: it may have been cut off. Save or copy it again. Nothing was changed.';
  const before = text.slice(0, end).split('\n');
  const column = (before.at(-1)?.length ?? 0) + 1;
  return (
    `The file stops making sense in line ${before.length}, column ${column}: from there on it is no JSON. It may have been ` +
    'changed by hand or mixed with another. Nothing was changed.'
  );
}
