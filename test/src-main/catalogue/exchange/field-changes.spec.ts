import { describe, expect, it } from 'vitest';
import { fieldChanges } from '../../../../src-main/catalogue/exchange/field-changes.ts';

describe('fieldChanges()', () => {
  it('finds nothing between values that say the same, in whatever order, and with either zero', () => {
    expect(fieldChanges({ a: 1, b: { c: [0, null] } }, { b: { c: [-0, null] }, a: 1 })).toEqual([]);
  });

  it('names each field that differs with both values', () => {
    const before = { label: 'Bank', price: { minor: 10, currency: 'EUR' }, owned: true };
    const after = { label: 'Bank', price: { minor: 12, currency: 'EUR' }, owned: false };
    expect(fieldChanges(before, after)).toEqual([
      { path: 'price.minor', before: 10, after: 12 },
      { path: 'owned', before: true, after: false },
    ]);
  });

  it('names what only one of them has, as none on the other side', () => {
    expect(
      fieldChanges(
        { use: { as: 'day', wh: 4 }, measured: null },
        { use: { as: 'now', w: 1 }, measured: { value: 9 } },
      ),
    ).toEqual([
      { path: 'use.as', before: 'day', after: 'now' },
      { path: 'use.wh', before: 4, after: null },
      { path: 'use.w', before: null, after: 1 },
      { path: 'measured.value', before: null, after: 9 },
    ]);
  });

  it('goes into lists of one length, and counts those of two', () => {
    expect(fieldChanges({ kit: [{ n: 1 }, { n: 2 }] }, { kit: [{ n: 1 }, { n: 3 }] })).toEqual([
      { path: 'kit.1.n', before: 2, after: 3 },
    ]);
    expect(fieldChanges({ kit: [{ n: 1 }] }, { kit: [{ n: 1 }, { n: 3 }] })).toEqual([
      { path: 'kit', before: '1 entry', after: '2 entries' },
    ]);
  });
});
