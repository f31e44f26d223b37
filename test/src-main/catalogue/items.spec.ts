import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { id as idSchema } from '../../../shared-types/field.ts';
import {
  itemDraft,
  itemKinds,
  type Item,
  type ItemDraft,
  type ItemKind,
} from '../../../shared-types/item.ts';
import { inMemory } from '../../../src-main/catalogue/connection.ts';
import {
  addItems,
  findItem,
  hasItem,
  listItems,
  saveItem,
  setItemState,
} from '../../../src-main/catalogue/items.ts';
import { findScenario } from '../../../src-main/catalogue/scenarios.ts';
import { randomItem } from './random-drafts.ts';
import { opened, openedDemo } from './temporary-catalogue.ts';

const kinds = Object.keys(itemKinds) as ItemKind[];

function demo(id: string): Item {
  return demoItems.find((item) => item.id === id)!;
}

function draftOf(id: string): ItemDraft {
  const parts = Object.entries(demo(id)).filter(([field]) => field !== 'id');
  return itemDraft.parse(Object.fromEntries(parts));
}

describe('findItem()', () => {
  it('is null for an id that names nothing', () => {
    expect(findItem(opened().read, 'gone')).toBeNull();
  });

  it('finds the item of that id alone', () => {
    expect(findItem(openedDemo().read, 'demo-bank-20')).toEqual(demo('demo-bank-20'));
  });
});

describe('hasItem()', () => {
  it('tells an item from nothing', () => {
    const { read } = openedDemo();
    expect([hasItem(read, 'gone'), hasItem(read, 'demo-phone')]).toEqual([false, true]);
  });
});

describe('setItemState()', () => {
  it('is null for an id that names nothing', () => {
    expect(setItemState(opened().write, 'gone', 'retired')).toBeNull();
  });

  it('changes the state and nothing else', () => {
    const { read, write } = openedDemo();
    const retired = { ...demo('demo-hub-3'), state: 'retired' };
    expect(setItemState(write, 'demo-hub-3', 'retired')).toEqual(retired);
    expect(findItem(read, 'demo-hub-3')).toEqual(retired);
  });
});

describe('saveItem()', () => {
  it('stores nothing of an item that breaks a rule', () => {
    const { read, write } = opened();
    const tooWeak = { ...draftOf('demo-bank-20'), outputs: [{ standard: 'pd', powerW: 0 }] } as ItemDraft;
    expect(() => saveItem(write, tooWeak)).toThrow(/CHECK constraint/);
    expect(listItems(read)).toEqual([]);
  });

  it('keeps the old item when the new one breaks a rule', () => {
    const { read, write } = openedDemo();
    const bad = { ...draftOf('demo-phone'), health: 2 } as ItemDraft;
    expect(() => saveItem(write, bad, 'demo-phone')).toThrow(/CHECK constraint/);
    expect(findItem(read, 'demo-phone')).toEqual(demo('demo-phone'));
  });

  it('gives a new item a fitting id of its own', () => {
    const { read, write } = opened();
    const [first, second] = [saveItem(write, draftOf('demo-phone')), saveItem(write, draftOf('demo-phone'))];
    expect(idSchema.safeParse(first.id).success).toBe(true);
    expect(first.id).not.toBe(second.id);
    expect(listItems(read)).toHaveLength(2);
  });

  it('replaces the item of that id', () => {
    const { read, write } = openedDemo();
    const lighter = saveItem(write, { ...draftOf('demo-phone'), massG: 171.5 }, 'demo-phone');
    expect(findItem(read, 'demo-phone')).toEqual(lighter);
    expect(listItems(read)).toHaveLength(demoItems.length);
  });

  it('keeps an item in the kits that carry it', () => {
    const { read, write } = openedDemo();
    const before = findScenario(read, 'demo-panel');
    saveItem(write, { ...draftOf('demo-panel-20'), massG: 600 }, 'demo-panel-20');
    expect(findScenario(read, 'demo-panel')).toEqual(before);
  });

  it('leaves nothing of the kind an item was before', () => {
    const { read, write } = openedDemo();
    saveItem(write, draftOf('demo-hub-3'), 'demo-bank-20');
    expect(findItem(read, 'demo-bank-20')).toEqual({ ...demo('demo-hub-3'), id: 'demo-bank-20' });
    const left = ['banks', 'ports'].map((table) =>
      read.prepare(`SELECT count(*) FROM ${table} WHERE item_id = 'demo-bank-20'`).pluck().get(),
    );
    expect(left).toEqual([0, 0]);
  });

  it('replaces a measured curve by a shorter one', () => {
    const { read, write } = opened();
    const hub = draftOf('demo-hub-3') as Extract<ItemDraft, { kind: 'generator-hub' }>;
    const point = (speedKmh: number) => ({ speedKmh, powerW: speedKmh / 5 });
    saveItem(
      write,
      { ...hub, power: { as: 'curve', readAt: 'plug', points: [point(5), point(15), point(25)] } },
      'hub',
    );
    const shorter = saveItem(
      write,
      { ...hub, power: { as: 'curve', readAt: 'hub', points: [point(8), point(20)] } },
      'hub',
    );
    expect(findItem(read, 'hub')).toEqual(shorter);
  });

  it.each(kinds)('gives a %s back exactly as it was saved', (kind) => {
    const { read, write } = opened(inMemory);
    fc.assert(
      fc.property(randomItem(kind), (draft) => {
        expect(itemDraft.safeParse(draft).success).toBe(true);
        const saved = saveItem(write, draft, 'random');
        expect(saved).toEqual({ ...draft, id: 'random' });
        expect(listItems(read)).toEqual([saved]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('addItems()', () => {
  it('stores none when one breaks a rule', () => {
    const { read, write } = opened();
    const drafts = [draftOf('demo-phone'), { ...draftOf('demo-camera'), massG: -1 }];
    expect(() => addItems(write, drafts)).toThrow(/CHECK constraint/);
    expect(listItems(read)).toEqual([]);
  });

  it('stores all, each under an id of its own', () => {
    const { read, write } = opened();
    const added = addItems(write, [draftOf('demo-phone'), draftOf('demo-camera')]);
    expect(listItems(read)).toHaveLength(2);
    expect(new Set(added.map((item) => item.id)).size).toBe(2);
  });
});

describe('listItems()', () => {
  it('is empty in a new catalogue', () => {
    expect(listItems(opened().read)).toEqual([]);
  });

  it('orders by label without regard to case, then id', () => {
    const { read, write } = opened();
    const labels = { d: 'cable', c: 'Bank', b: 'bank', a: 'Zip ties' };
    for (const [id, label] of Object.entries(labels))
      saveItem(write, { ...draftOf('demo-cables'), label }, id);
    expect(listItems(read).map((item) => item.id)).toEqual(['b', 'c', 'd', 'a']);
  });
});
