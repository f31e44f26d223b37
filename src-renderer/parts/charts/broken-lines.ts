/** How wide a text is when it is written, px. */
export type Measure = (text: string) => number;

/** A text in lines no wider than `widthPx`, broken between words; a word wider than a line is broken anywhere. */
export function brokenLines(text: string, widthPx: number, measure: Measure): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').flatMap((each) => pieces(each, widthPx, measure))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || measure(longer) <= widthPx) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

/** A word as far as it fits on a line, and the rest of it likewise; a line takes one letter at least. */
function pieces(word: string, widthPx: number, measure: Measure): readonly string[] {
  const found: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && measure(piece + letter) > widthPx) {
      found.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...found, piece];
}
