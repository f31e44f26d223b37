import { describe, expect, it } from 'vitest';
import { digitsOf, toCsv } from '../../../../src-renderer/parts/charts/chart-table.ts';

const csv = (...cells: (string | number)[]): string =>
  toCsv({ columns: [], rows: [cells] }).split('\r\n')[1]!;

describe('digitsOf()', () => {
  const rows = [
    ['a', 300, 12.5],
    ['b', 301, 13],
  ];

  it('shows a column of whole figures whole, and tenths where there are any', () => {
    expect([1, 2].map((column) => digitsOf({ columns: [], rows }, column))).toEqual([0, 1]);
  });
});

describe('toCsv()', () => {
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx'])('keeps a spreadsheet from running %j', (text) => {
    expect(csv(text)).toMatch(/^"?'/);
  });

  // RFC 4180: a cell with a comma, quote or line break stands in quotes, quotes inside are doubled.
  it.each([
    ['20 Ah bank, 18 W in', '"20 Ah bank, 18 W in"'],
    ['the "big" one', '"the ""big"" one"'],
    ['two\nlines', '"two\nlines"'],
  ])('quotes %j', (text, cell) => {
    expect(csv(text)).toBe(cell);
  });

  it('writes what is no number as an empty cell', () => {
    expect(csv(Number.NaN, Infinity, 1)).toBe(',,1');
  });

  it('writes numbers with a point and a plain minus', () => {
    expect(csv(-1234.56789, 0.1 + 0.2)).toBe('-1234.568,0.3');
  });

  it('writes columns first and ends each line', () => {
    expect(toCsv({ columns: ['Day', 'Wh'], rows: [['1', 5]] })).toBe('Day,Wh\r\n1,5\r\n');
  });
});
