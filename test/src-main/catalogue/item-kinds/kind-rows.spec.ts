import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemKinds, type ItemKind } from '../../../../shared-types/item.ts';
import { clearKindPart, readKindPart } from '../../../../src-main/catalogue/item-kinds/kind-rows.ts';
import { saveItem } from '../../../../src-main/catalogue/items.ts';
import { randomItem } from '../random-drafts.ts';
import { opened } from '../temporary-catalogue.ts';

const kinds = Object.keys(itemKinds) as ItemKind[];

describe('readKindPart()', () => {
  it.each(kinds)('throws when a %s has lost its figures', (kind) => {
    const { write } = opened();
    expect(() => readKindPart(write, 'gone', kind)).toThrow(/misses a row/);
  });
});

describe('clearKindPart()', () => {
  it.each(kinds)('leaves no row of a %s but the item itself', (kind) => {
    const { write } = opened();
    const [draft] = fc.sample(randomItem(kind), 1);
    saveItem(write, draft!, 'random');
    clearKindPart(write, 'random');
    const tables = write
      .prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table' AND sql LIKE '%item_id%'")
      .pluck()
      .all();
    const left = tables.filter((table) =>
      write.prepare(`SELECT 1 FROM ${table} WHERE item_id = 'random'`).get(),
    );
    expect([tables.length, left]).toEqual([13, []]);
  });
});
