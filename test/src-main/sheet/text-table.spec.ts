import { describe, expect, it } from 'vitest';
import { displayWidth } from '../../../src-main/sheet/plain-text.ts';
import { textTable, type TextColumn } from '../../../src-main/sheet/text-table.ts';

const columns: readonly TextColumn[] = [
  { head: 'Scenario', align: 'left', widest: 12 },
  { head: 'Wh', align: 'right' },
];

describe('textTable', () => {
  it('shows its head even without rows', () => {
    expect(textTable(columns, [])).toEqual(['Scenario  Wh', '--------  --']);
  });

  it('keeps a label with a line break in its row', () => {
    expect(textTable(columns, [['Two\nbanks', '9.0']])).toHaveLength(3);
  });

  it('cuts only the column that has a limit', () => {
    expect(textTable(columns, [['Panel and buffer bank', '1,234,567.0']])).toEqual([
      'Scenario               Wh',
      '------------  -----------',
      'Panel and b…  1,234,567.0',
    ]);
  });

  it('aligns figures by the width a reader sees', () => {
    const lines = textTable(columns, [
      ['電池', '9.0'],
      ['Łódź', '109.0'],
    ]);
    expect(new Set(lines.map(displayWidth)).size).toBe(1);
  });

  it('leaves no spaces at the end of a line', () => {
    const left: readonly TextColumn[] = [{ head: 'Limited by', align: 'left' }];
    expect(textTable(left, [['Phone']])[2]).toBe('Phone');
  });
});
