import { describe, expect, it } from 'vitest';
import { mergedRows, rowsWithout } from '../../../src-renderer/state/merged-rows.ts';

const rows = [
  { id: 'a', label: 'A' },
  { id: 'b', label: 'B' },
];

describe('mergedRows()', () => {
  it('puts changed rows in their places and new ones at the end', () => {
    const changed = [
      { id: 'c', label: 'C' },
      { id: 'a', label: 'A again' },
    ];
    expect(mergedRows(rows, changed).map(({ label }) => label)).toEqual(['A again', 'B', 'C']);
  });
});

describe('rowsWithout()', () => {
  it('takes rows out and passes over ids that are not there', () => {
    expect(rowsWithout(rows, ['a', 'gone'])).toEqual([rows[1]]);
  });
});
