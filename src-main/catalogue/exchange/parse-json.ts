import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';

/** A catalogue file goes eleven groups and lists deep, to the figures of a track; what goes far deeper is something else. */
const deepest = 32;

/** Half of a character, which no database keeps as it is. */
const halfCharacter = /\\u[dD][89a-fA-F]/;

/** The value of a JSON text; where it stops making sense, an answer says where. */
export function parseJson(given: string): Outcome<unknown> {
  const text = given.replace(/^\uFEFF/, '').toWellFormed();
  try {
    const value: unknown = JSON.parse(text, halfCharacter.test(text) ? wholeCharacters : undefined);
    return goesDeeper(value, deepest) ? tooDeep : success(value);
  } catch (fault) {
    return fault instanceof RangeError ? tooDeep : failure('unreadable', whereBroken(text));
  }
}

const tooDeep = failure(
  'unreadable',
  `This is not a Chargewright catalogue file: it has lists within lists more than ${deepest} deep. Nothing was changed.`,
);

function wholeCharacters(_key: string, value: unknown): unknown {
  return typeof value === 'string' ? value.toWellFormed() : value;
}

function goesDeeper(value: unknown, levels: number): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return levels === 0 || Object.values(value).some((part) => goesDeeper(part, levels - 1));
}

function whereBroken(text: string): string {
  if (text.trim() === '') return 'The file is empty. Nothing was changed.';
  if (isBeginning(text))
    return 'The file ends in the middle: it may have been cut off. Save or copy it again. Nothing was changed.';
  const before = text.slice(0, longestBeginning(text)).split('\n');
  const column = (before.at(-1)?.length ?? 0) + 1;
  return (
    `The file stops making sense in line ${before.length}, column ${column}: from there on it is no JSON. It may have been ` +
    'changed by hand or mixed with another. Nothing was changed.'
  );
}

/** The parser does not always say where it stopped, but it tells a beginning from nonsense: so the end is found by halving. */
function longestBeginning(text: string): number {
  let [good, bad] = [0, text.length];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (isBeginning(text.slice(0, middle))) good = middle;
    else bad = middle;
  }
  return good;
}

const endWords = /Unexpected end|Unterminated/;

/** Whether a text is JSON, or would be if it went on. */
function isBeginning(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch (fault) {
    const message = fault instanceof Error ? fault.message : '';
    const position = /at position (\d+)/.exec(message)?.[1];
    return endWords.test(message) || Number(position) >= text.length;
  }
}
