import { existsSync } from 'node:fs';
import { isAbsolute } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fontFiles, printable, sheetFont } from '../../../../src-main/sheet/pdf/fonts.ts';

describe('printable', () => {
  it('replaces the one space the font lacks', () => {
    expect(printable('+31\u202f%')).toBe('+31\u00a0%');
  });

  it('turns control characters into a space', () => {
    expect(printable('Phone\r\n\u0007and tablet')).toBe('Phone and tablet');
  });

  it('composes accents so that one glyph is drawn', () => {
    expect(printable('n\u0303')).toBe('ñ');
  });

  it('reaches every text of a tree and nothing else', () => {
    const widthOf = () => 3;
    const node = { text: ['1\u202f%', { text: '2\u202f%' }], margin: [0, 1], widthOf, empty: null };
    expect(printable(node)).toEqual({
      text: ['1\u00a0%', { text: '2\u00a0%' }],
      margin: [0, 1],
      widthOf,
      empty: null,
    });
  });
});

describe('fontFiles', () => {
  it('finds all four cuts on this disk', () => {
    const files = Object.values(fontFiles()[sheetFont] ?? {}) as string[];
    expect(files).toHaveLength(4);
    expect(files.every((file) => isAbsolute(file) && existsSync(file))).toBe(true);
  });
});
