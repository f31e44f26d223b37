/** Cells of a terminal: East Asian wide and full-width characters and emoji take two. */
const takesTwoCells =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}\u3000-\u303f\uff01-\uff60\uffe0-\uffe6]/u;
const takesNoCell = /^[\p{Mark}\p{Cf}]+$/u;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
const ellipsis = '…';

/**
 * A label as one harmless line: control characters could move a terminal's cursor or break a table row, and direction
 * overrides could make a label read as another.
 */
export function oneLine(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\u202a-\u202e\u2066-\u2069]/gu, '')
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .trim();
}

function cellsOf(grapheme: string): number {
  if (takesNoCell.test(grapheme)) return 0;
  return takesTwoCells.test(grapheme) ? 2 : 1;
}

function split(text: string): string[] {
  return Array.from(graphemes.segment(text), ({ segment }) => segment);
}

/** How many cells of a terminal a text takes. */
export function displayWidth(text: string): number {
  return split(text).reduce((cells, grapheme) => cells + cellsOf(grapheme), 0);
}

/** The longest beginning that fits into `cells`. */
function beginning(text: string, cells: number): string {
  let taken = '';
  let left = cells;
  for (const grapheme of split(text)) {
    left -= cellsOf(grapheme);
    if (left < 0) break;
    taken += grapheme;
  }
  return taken;
}

/** Cuts a text to `cells`, an ellipsis marking the cut. */
export function cut(text: string, cells: number): string {
  return displayWidth(text) <= cells ? text : `${beginning(text, cells - 1)}${ellipsis}`;
}

export function pad(text: string, cells: number, align: 'left' | 'right'): string {
  const space = ' '.repeat(Math.max(0, cells - displayWidth(text)));
  return align === 'left' ? text + space : space + text;
}

/** Pieces of at most `cells`, so that a word longer than a line is broken instead of running out. */
function pieces(word: string, cells: number): string[] {
  if (displayWidth(word) <= cells) return [word];
  const first = beginning(word, cells);
  return [first, ...pieces(word.slice(first.length), cells)];
}

/** Breaks at ordinary spaces only; later lines begin with `indent`. */
export function wrap(text: string, cells: number, indent = ''): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').flatMap((each) => pieces(each, cells - indent.length))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (displayWidth(longer) <= cells) line = longer;
    else {
      lines.push(line);
      line = indent + word;
    }
  }
  return [...lines, line];
}
