/** What may come next. */
type Wanted = 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'colon' | 'comma-or-end';

/** How far a scan has come. */
interface Scan {
  readonly text: string;
  at: number;
  wanted: Wanted;
  /** The groups and lists that are open, the innermost last. */
  readonly open: ('{' | '[')[];
}

/**
 * Where a text stops being the beginning of a JSON text (RFC 8259): its length where it is whole, or would be if it went on. One
 * pass, for the parser tells in many cases only that there is something wrong.
 */
export function endOfSense(text: string): number {
  const scan: Scan = { text, at: 0, wanted: 'value', open: [] };
  for (;;) {
    passBlanks(scan);
    if (scan.at >= text.length || !passToken(scan)) return scan.at;
  }
}

const blanks: ReadonlySet<string | undefined> = new Set([' ', '\t', '\n', '\r']);

function passBlanks(scan: Scan): void {
  while (blanks.has(scan.text[scan.at])) scan.at += 1;
}

/** Passes one word, figure or sign; where that makes no sense, stops inside it. */
function passToken(scan: Scan): boolean {
  const sign = scan.text[scan.at]!;
  switch (scan.wanted) {
    case 'colon':
      return sign === ':' && passSign(scan, 'value');
    case 'comma-or-end':
      return (sign === ',' && passComma(scan)) || passEnd(scan, sign);
    case 'key':
    case 'key-or-end':
      if (sign === '"') return passText(scan) && want(scan, 'colon');
      return scan.wanted === 'key-or-end' && passEnd(scan, sign);
    case 'value':
    case 'value-or-end':
      return (scan.wanted === 'value-or-end' && passEnd(scan, sign)) || passValue(scan, sign);
  }
}

function want(scan: Scan, wanted: Wanted): true {
  scan.wanted = wanted;
  return true;
}

function passSign(scan: Scan, wanted: Wanted): true {
  scan.at += 1;
  return want(scan, wanted);
}

function passComma(scan: Scan): boolean {
  const around = scan.open.at(-1);
  return around !== undefined && passSign(scan, around === '{' ? 'key' : 'value');
}

function passEnd(scan: Scan, sign: string): boolean {
  const around = scan.open.at(-1);
  if (around === undefined || sign !== (around === '{' ? '}' : ']')) return false;
  scan.open.pop();
  return passSign(scan, 'comma-or-end');
}

function passValue(scan: Scan, sign: string): boolean {
  if (sign === '{' || sign === '[') {
    scan.open.push(sign);
    return passSign(scan, sign === '{' ? 'key-or-end' : 'value-or-end');
  }
  return (sign === '"' ? passText(scan) : passWord(scan) || passFigure(scan)) && want(scan, 'comma-or-end');
}

/** What stands behind a backslash: one letter, or u and four figures. */
const escaped = /["\\/bfnrt]|u[\da-fA-F]{0,4}/y;
const escapeLength = 5;

function passText(scan: Scan): boolean {
  const { text } = scan;
  scan.at += 1;
  while (scan.at < text.length && text[scan.at]! >= ' ') {
    const sign = text[scan.at];
    scan.at += 1;
    if (sign === '"') return true;
    if (sign === '\\' && !passEscape(scan)) return false;
  }
  return false;
}

function passEscape(scan: Scan): boolean {
  const found = passPattern(scan, escaped);
  return found.startsWith('u') ? found.length === escapeLength : found !== '';
}

const words = ['true', 'false', 'null'] as const;

function passWord(scan: Scan): boolean {
  const { text, at } = scan;
  const word = words.find(([first]) => text[at] === first);
  if (word === undefined) return false;
  let length = 1;
  while (length < word.length && text[at + length] === word[length]) length += 1;
  scan.at += length;
  return length === word.length;
}

/** A number, or as much of one as makes sense. */
const begunFigure = /-?(?:(?:0|[1-9]\d*)(?:\.(?:\d+(?:[eE][+-]?\d*)?)?|[eE][+-]?\d*)?)?/y;
const wholeFigure = /\d$/;

function passFigure(scan: Scan): boolean {
  return wholeFigure.test(passPattern(scan, begunFigure));
}

function passPattern(scan: Scan, pattern: RegExp): string {
  pattern.lastIndex = scan.at;
  const [found = ''] = pattern.exec(scan.text) ?? [];
  scan.at += found.length;
  return found;
}
