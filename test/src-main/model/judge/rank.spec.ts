import { describe, expect, it } from 'vitest';
import { rankOf } from '../../../../src-main/model/judge/rank.ts';

const byValue = (a: number, b: number): number => a - b;

describe('rankOf()', () => {
  it('lets equals share a rank, and leaves out as many after them', () => {
    const rows = [5, 7, 5, 1];
    expect(rows.map((row) => rankOf(row, rows, byValue))).toEqual([2, 1, 2, 4]);
  });
});
