import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import { readEntries } from '../../../../src-main/catalogue/exchange/read-entries.ts';

describe('readEntries()', () => {
  it('looks at no more entries once ten thousand of a list are refused', () => {
    const raws = [...new Array<number>(10_000).fill(0), demoItems[0]!];
    const [last, before] = readEntries('items', raws).toReversed();
    expect(before?.reasons).toMatchObject([{ allowed: 'a group of fields', got: '0' }]);
    expect(last).toMatchObject({
      row: null,
      reasons: [{ path: '', allowed: 'less than 10,000 refused entries before it', got: 'not looked at' }],
    });
  });

  it('looks at every entry while fewer are refused', () => {
    const raws = [...new Array<number>(9999).fill(0), demoItems[0]!];
    expect(readEntries('items', raws).at(-1)).toMatchObject({ row: demoItems[0], reasons: [] });
  });
});
