import { describe, expect, it } from 'vitest';
import { reachOfCheck } from '../../../../src-renderer/views/inventory/checked-range.ts';

const ids = ['a', 'b', 'c', 'd'];

describe('reachOfCheck()', () => {
  it('is the one row without the shift key, and where nothing was checked before', () => {
    expect(reachOfCheck(ids, 2, 'a', false)).toEqual(['c']);
    expect(reachOfCheck(ids, 2, null, true)).toEqual(['c']);
  });

  it('is the one row where the one before is shown no longer', () => {
    expect(reachOfCheck(ids, 2, 'gone', true)).toEqual(['c']);
  });

  it('goes from the one before to this one, up or down', () => {
    expect(reachOfCheck(ids, 3, 'b', true)).toEqual(['b', 'c', 'd']);
    expect(reachOfCheck(ids, 0, 'c', true)).toEqual(['a', 'b', 'c']);
  });
});
