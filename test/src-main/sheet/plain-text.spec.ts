import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cut, displayWidth, oneLine, pad, wrap } from '../../../src-main/sheet/plain-text.ts';

describe('oneLine', () => {
  it('removes what could move a terminal cursor', () => {
    expect(oneLine('\u001b[2JPhone\r\nand\ttablet\u2028')).toBe('[2JPhone and tablet');
  });

  it('removes direction overrides that disguise a label', () => {
    expect(oneLine('bank \u202egnp.exe\u202c')).toBe('bank gnp.exe');
  });

  it('composes letters and accents typed apart', () => {
    expect(oneLine('Lo\u0301dz\u0301')).toBe('Lódź');
  });
});

describe('displayWidth', () => {
  // Unicode Standard Annex 11: wide and full-width characters take two cells; combining marks none.
  it('counts cells of a terminal, not code units', () => {
    expect(displayWidth('ø ü ł ñ')).toBe(7);
    expect(displayWidth('電池')).toBe(4);
    expect(displayWidth('Ａ')).toBe(2);
    expect(displayWidth('🔋')).toBe(2);
    expect(displayWidth('e\u0301')).toBe(1);
    expect(displayWidth('\u200b')).toBe(0);
  });
});

describe('cut', () => {
  it('leaves a text that just fits alone', () => {
    expect(cut('20 Ah bank', 10)).toBe('20 Ah bank');
  });

  it('never exceeds its width, even between wide characters', () => {
    expect(cut('電池電池', 4)).toBe('電…');
    expect(displayWidth(cut('電池電池', 4))).toBeLessThanOrEqual(4);
  });
});

describe('pad', () => {
  it('pads by width on the side asked for', () => {
    expect(pad('電', 4, 'left')).toBe('電  ');
    expect(pad('7', 4, 'right')).toBe('   7');
  });

  it('leaves an over-long text whole', () => {
    expect(pad('overlong', 4, 'left')).toBe('overlong');
  });
});

describe('wrap', () => {
  it('breaks a word longer than the line', () => {
    expect(wrap('abcdefghij', 4)).toEqual(['abcd', 'efgh', 'ij']);
  });

  it('does not break at a no-break space', () => {
    expect(wrap('margin +31\u202f% left', 11)).toEqual(['margin', '+31\u202f% left']);
  });

  it('indents every line but the first', () => {
    expect(wrap('- one two three', 7, '  ')).toEqual(['- one', '  two', '  three']);
  });

  it('keeps each line in bounds and loses no word', () => {
    const word = fc.stringMatching(/^[a-zøł電🔋]{1,30}$/u);
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 8, max: 40 }),
        (words, cells) => {
          const lines = wrap(words.join(' '), cells, '  ');
          expect(lines.every((line) => displayWidth(line) <= cells)).toBe(true);
          expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''));
        },
      ),
    );
  });
});
