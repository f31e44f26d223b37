import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endOfSense } from '../../../../src-main/catalogue/exchange/end-of-sense.ts';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('endOfSense()', () => {
  it.each([
    ['x', 0],
    ['{"a": 1,, }', 8],
    ['{"a": 1, }', 9],
    ['[1, ]', 4],
    ['[1}', 2],
    ['{]', 1],
    ['{"a" 1}', 5],
    ['{1: 2}', 1],
    ['[truth]', 4],
    ['[nil]', 2],
    ['[01]', 2],
    ['[1.]', 3],
    ['[-.5]', 2],
    ['[1e]', 3],
    ['[+1]', 1],
    ['["a\nb"]', 3],
    [String.raw`["\x"]`, 3],
    [String.raw`["\u12g4"]`, 6],
    ['1 2', 2],
    ['{} {}', 3],
    [']', 0],
  ])('of %j is at %d', (text, end) => {
    expect(endOfSense(text)).toBe(end);
  });

  it('is the end of all JSON there is, and of every beginning of it', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(), (text, cut) => {
        expect(endOfSense(text)).toBe(text.length);
        const beginning = text.slice(0, cut % (text.length + 1));
        expect(endOfSense(beginning)).toBe(beginning.length);
      }),
    );
  });

  it('stands before what the parser refuses, and behind all that made sense', () => {
    const wrongs = fc.constantFrom(...Array.from('{}[],:"\\0-.eux\n'));
    fc.assert(
      fc.property(fc.json({ maxDepth: 2 }), fc.nat(), wrongs, (text, cut, wrong) => {
        const place = cut % (text.length + 1);
        const spoilt = text.slice(0, place) + wrong + text.slice(place);
        const end = endOfSense(spoilt);
        expect(end).toBeGreaterThanOrEqual(place);
        expect(endOfSense(spoilt.slice(0, end))).toBe(end);
        if (end < spoilt.length) expect(isJson(spoilt)).toBe(false);
      }),
    );
  });
});
