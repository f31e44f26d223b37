import { describe, expect, it } from 'vitest';
import { readTable } from '../../../../src-main/catalogue/csv/table.ts';

const cellsOf = (text: string): unknown[] => readTable(text).rows.map((row) => Object.fromEntries(row.cells));

describe('readTable()', () => {
  it('reads no rows under a header it does not know', () => {
    const table = readTable('colour,size\nred,4');
    expect([table.rows, table.problems.length]).toEqual([[], 1]);
  });

  it('reads no rows under more columns than an inventory has, named or not', () => {
    for (const header of [`kind${',x'.repeat(5000)}`, `kind${','.repeat(5000)}`]) {
      const table = readTable(`${header}\naccessory\n`);
      expect(table.rows).toEqual([]);
      expect(table.problems).toMatchObject([
        { line: 1, message: expect.stringMatching(/^Allowed are at most \d+ columns/) as string },
      ]);
    }
  });

  it('names a line with broken quotation marks once, and a hundred such lines at most', () => {
    const { problems } = readTable(`kind,label\n${'accessory,"a"b"c"d\n'.repeat(500)}`);
    expect(problems.map(({ line }) => line)).toEqual(
      Array.from({ length: problems.length }, (_, place) => place + 2),
    );
    expect(problems.length).toBeLessThanOrEqual(100);
  });

  it('repeats only the beginning of a stray cell', () => {
    const { lineProblems } = readTable(`kind\naccessory,${'x'.repeat(5000)}\n`);
    expect(lineProblems).toMatchObject([{ line: 2 }]);
    expect(lineProblems[0]!.message.length).toBeLessThan(250);
  });

  it('passes empty cells and empty rows over, but counts them', () => {
    const { rows } = readTable('kind,label\n,\n\naccessory,\n');
    expect(rows).toEqual([{ line: 4, cells: new Map([['kind', 'accessory']]) }]);
  });

  it('takes a short row for one with empty cells', () => {
    expect(cellsOf('kind,label,notes\naccessory,Cable')).toEqual([{ kind: 'accessory', label: 'Cable' }]);
  });

  it('is not misled by commas in the labels of a semicolon file', () => {
    const rows = Array.from({ length: 9 }, () => 'accessory;a,b,c,d,e,f');
    expect(cellsOf(['kind;label', ...rows].join('\n'))[8]).toEqual({
      kind: 'accessory',
      label: 'a,b,c,d,e,f',
    });
  });

  it.each([
    [',', false],
    [';', true],
    ['\t', true],
  ])('with %j between columns, says whether 3,85 is a number', (delimiter, decimalComma) => {
    expect(readTable(`kind${delimiter}label\n`).decimalComma).toBe(decimalComma);
  });

  it.each(['\n', '\r\n', '\r'])('takes %j as the end of a line', (end) => {
    expect(cellsOf(`kind,label${end}accessory,Cable${end}`)).toEqual([{ kind: 'accessory', label: 'Cable' }]);
  });
});
