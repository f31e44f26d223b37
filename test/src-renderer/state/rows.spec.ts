import { describe, expect, it } from 'vitest';
import { Rows } from '../../../src-renderer/state/rows.svelte.ts';

interface Row {
  readonly id: string;
  readonly label: string;
}

function filled(...ids: string[]): Rows<Row> {
  const rows = new Rows<Row>();
  rows.fill(ids.map((id) => ({ id, label: id })));
  return rows;
}

const ids = (rows: Rows<Row>): string[] => rows.all.map(({ id }) => id);

describe('Rows', () => {
  it('finds nothing for an id that is not there', () => {
    expect(filled('a').find('b')).toBeUndefined();
  });

  it('replaces a row where it stands', () => {
    const rows = filled('a', 'b', 'c');
    rows.put({ id: 'b', label: 'new' });
    expect(rows.all).toEqual([
      { id: 'a', label: 'a' },
      { id: 'b', label: 'new' },
      { id: 'c', label: 'c' },
    ]);
  });

  it('adds a new row at the end', () => {
    const rows = filled('a');
    rows.put({ id: 'b', label: 'b' });
    expect(ids(rows)).toEqual(['a', 'b']);
  });

  it('puts a dropped row back where it stood', () => {
    const rows = filled('a', 'b', 'c');
    const place = rows.drop('b');
    expect(ids(rows)).toEqual(['a', 'c']);
    rows.put({ id: 'b', label: 'b' }, place);
    expect(ids(rows)).toEqual(['a', 'b', 'c']);
  });
});
