import fc from 'fast-check';
import papaparse from 'papaparse';
import { describe, expect, it } from 'vitest';
import {
  rounded,
  tidyCsv,
  tidyTable,
  yesNo,
  type TidyCell,
} from '../../../../src-main/sheet/csv/tidy-table.ts';

const byteOrderMark = '\ufeff';

function oneCell(cell: TidyCell): string {
  return tidyCsv({ columns: ['cell'], rows: [[cell]] });
}

function readBack(csv: string): readonly (readonly string[])[] {
  const { data, errors } = papaparse.parse<string[]>(csv.replace(byteOrderMark, ''), {
    delimiter: ',',
    newline: '\r\n',
  });
  expect(errors).toEqual([]);
  // The last line end leaves an empty line behind it.
  return data.slice(0, -1);
}

describe('tidyCsv', () => {
  it.each([
    '=HYPERLINK("x","y")',
    '+1',
    '-2',
    '@SUM(A1)',
    '\t=1',
    '\tplain',
    '\r=1',
    '\n=1',
    ' =1',
    '=1\n2',
    // The full-width signs, U+FF1D, U+FF0B, U+FF0D and U+FF20.
    '\uff1d1',
    '\uff0b1',
    '\uff0d1',
    '\uff201',
  ])('defuses a text that begins like a formula: %j', (text) => {
    expect(readBack(oneCell(text))[1]).toEqual([`'${text}`]);
  });

  it('leaves signs inside a text alone, and a negative number a number', () => {
    expect(readBack(oneCell('Hub + panel = mix'))[1]).toEqual(['Hub + panel = mix']);
    expect(oneCell(-0.18)).toBe(`${byteOrderMark}cell\r\n-0.18\r\n`);
  });

  it('begins with one byte order mark, in UTF-8 EF BB BF', () => {
    // RFC 3629, section 6: U+FEFF as three bytes.
    expect([...new TextEncoder().encode(oneCell('a')).slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(oneCell('a').lastIndexOf(byteOrderMark)).toBe(0);
  });

  it('quotes commas, quotation marks and line breaks as RFC 4180 asks', () => {
    // RFC 4180, section 2, rules 1, 6 and 7: CRLF ends a line; such fields in quotes; a quote inside doubled.
    expect(oneCell('Panel, 20 W "folding"\nand bank')).toBe(
      `${byteOrderMark}cell\r\n"Panel, 20 W ""folding""\nand bank"\r\n`,
    );
  });

  it('is a head alone without rows, and ends every line with CRLF', () => {
    expect(tidyCsv({ columns: ['a', 'b'], rows: [] })).toBe(`${byteOrderMark}a,b\r\n`);
    expect(tidyCsv({ columns: ['a', 'b'], rows: [[1, null]] })).toBe(`${byteOrderMark}a,b\r\n1,\r\n`);
  });

  it('reads back as it was written, whatever a label holds', () => {
    const nasty = fc.constantFrom(
      '"',
      ',',
      '\n',
      '\r\n',
      '\r',
      '\t',
      '=',
      '+',
      '-',
      '@',
      '\uff1d',
      ';',
      "'",
      '\u00a0',
    );
    const label = fc.string({
      unit: fc.oneof(nasty, fc.string({ unit: 'grapheme', maxLength: 3 })),
      maxLength: 20,
    });
    const row = fc.tuple(label, label, fc.integer());
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 5 }), (rows) => {
        const got = readBack(tidyCsv({ columns: ['a', 'b', 'c'], rows }));
        expect(got).toHaveLength(rows.length + 1);
        for (const [at, [a, b, c]] of rows.entries()) {
          const [gotA, gotB, gotC] = got[at + 1]!;
          expect([a, `'${a}`]).toContain(gotA);
          expect([b, `'${b}`]).toContain(gotB);
          expect(gotC).toBe(String(c));
          for (const cell of [gotA!, gotB!])
            expect(cell).not.toMatch(/^\s*[=+\-@]|^\s*[\uff1d\uff0b\uff0d\uff20]/u);
        }
      }),
    );
  });
});

describe('tidyTable', () => {
  it('keeps its columns without rows', () => {
    const columns = { one: (row: number) => row, two: () => null };
    expect(tidyTable(columns, [])).toEqual({ columns: ['one', 'two'], rows: [] });
    expect(tidyTable(columns, [7])).toEqual({ columns: ['one', 'two'], rows: [[7, null]] });
  });
});

describe('rounded', () => {
  it.each([Number.NaN, Infinity, -Infinity])('is an empty cell for %d', (value) => {
    expect(rounded(value, 2)).toBeNull();
  });

  it('never leaves an exponent or a signed zero in the file', () => {
    expect(oneCell(rounded(1e-12, 3))).toContain('\r\n0\r\n');
    expect(oneCell(rounded(-1e-12, 3))).toContain('\r\n0\r\n');
    expect(rounded(1234.56789, 2)).toBe(1234.57);
  });
});

describe('yesNo', () => {
  it('is a word, not a number', () => {
    expect([yesNo(true), yesNo(false)]).toEqual(['yes', 'no']);
  });
});
