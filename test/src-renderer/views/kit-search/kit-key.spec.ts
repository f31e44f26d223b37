import { describe, expect, it } from 'vitest';
import { kitKey } from '../../../../src-renderer/views/kit-search/kit-key.ts';
import { foundKit } from '../../support/fake-kits.ts';

const [bank] = foundKit().items;

describe('kitKey()', () => {
  it('tells kits apart by item and quantity, whatever their labels', () => {
    const kits = [
      [],
      [bank!],
      [{ ...bank!, quantity: 2 }],
      [{ ...bank!, itemId: 'other-bank' }],
      [bank!, { ...bank!, itemId: 'other-bank' }],
    ];
    expect(new Set(kits.map((items) => kitKey({ items }))).size).toBe(kits.length);
  });
});
