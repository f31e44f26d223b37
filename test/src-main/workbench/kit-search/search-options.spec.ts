import { describe, expect, it } from 'vitest';
import { demoItems, demoSettings } from '../../../../db/demo/demo.ts';
import type { Item } from '../../../../shared-types/item.ts';
import type { KitChoice } from '../../../../shared-types/kit-search.ts';
import { searchOptions } from '../../../../src-main/workbench/kit-search/search-options.ts';

/** The options of the demo's items, some changed, by id. */
function optionsOf(choices: Readonly<Record<string, KitChoice>> = {}, items: readonly Item[] = demoItems) {
  const chosen = Object.entries(choices).map(([itemId, choice]) => ({ itemId, choice }));
  const { options, otherMoney } = searchOptions(items, chosen, demoSettings);
  return { by: new Map(options.map((option) => [option.item.id, option])), options, otherMoney };
}

const changed = (id: string, change: Partial<Item>): readonly Item[] =>
  demoItems.map((item) => (item.id === id ? ({ ...item, ...change } as Item) : item));

describe('searchOptions()', () => {
  it('takes what is owned or considered, and no device', () => {
    const ids = optionsOf().options.map(({ item }) => item.id);
    expect(ids).toContain('demo-bank-20');
    expect(ids).toContain('demo-panel-6');
    expect(ids).not.toContain('demo-phone');
    expect([...optionsOf({}, changed('demo-bank-20', { state: 'retired' })).by.keys()]).not.toContain(
      'demo-bank-20',
    );
  });

  it('does as the rider chose: none or all may come, one at least must, none at all stays out', () => {
    const { by } = optionsOf({ 'demo-bank-20': 'must', 'demo-bank-10': 'not', 'demo-panel-6': 'may' });
    expect(by.get('demo-bank-20')).toMatchObject({ least: 1, most: 1 });
    expect(by.has('demo-bank-10')).toBe(false);
    expect(by.get('demo-panel-6')).toMatchObject({ least: 0, most: 1 });
  });

  it('takes as many as there are, but one hub and one converter', () => {
    const three = demoItems.map((item) => ({ ...item, quantity: 3 }));
    const { by } = optionsOf({}, three);
    expect(by.get('demo-bank-20')!.most).toBe(3);
    expect(by.get('demo-hub-3')!.most).toBe(1);
    expect(by.get('demo-converter')!.most).toBe(1);
  });

  it('counts an owned item as bought, and its grams as carried', () => {
    const { by } = optionsOf();
    expect(by.get('demo-bank-20')!.each).toMatchObject({ toBuyMinor: 0, grams: 350 });
    const { price, massG } = demoItems.find(({ id }) => id === 'demo-panel-20')!;
    expect(by.get('demo-panel-20')!.each).toMatchObject({ toBuyMinor: price.minor, grams: massG });
  });

  it('lets the hub bring its cable, with cost and grams, unless the cable must come by itself', () => {
    const hub = optionsOf().by.get('demo-hub-3')!;
    const alone = optionsOf({ 'demo-hub-cable': 'not' }).by.get('demo-hub-3')!;
    const cable = demoItems.find(({ id }) => id === 'demo-hub-cable')!;
    expect(hub.along.map(({ id }) => id)).toEqual(['demo-hub-cable']);
    expect(alone.along).toEqual([]);
    expect(hub.each.grams - alone.each.grams).toBe(cable.massG);
    expect(optionsOf().by.has('demo-hub-cable')).toBe(false);
    const must = optionsOf({ 'demo-hub-cable': 'must' });
    expect(must.by.get('demo-hub-cable')).toMatchObject({ least: 1, most: 1 });
    expect(must.by.get('demo-hub-3')!.along).toEqual([]);
  });

  it('leaves a converter out where there is no hub for it, unless it must come', () => {
    expect(optionsOf({ 'demo-hub-3': 'not' }).by.has('demo-converter')).toBe(false);
    expect(optionsOf({ 'demo-hub-3': 'not', 'demo-converter': 'must' }).by.has('demo-converter')).toBe(true);
  });

  it('leaves out what is priced in other money, but not what is owned or costs nothing', () => {
    const dollars = { minor: 9000, currency: 'USD' };
    const considered = optionsOf({}, changed('demo-panel-20', { price: dollars }));
    expect(considered.otherMoney.map(({ id }) => id)).toEqual(['demo-panel-20']);
    expect(considered.by.has('demo-panel-20')).toBe(false);
    const owned = changed('demo-bank-20', { price: dollars });
    expect(optionsOf({}, owned).otherMoney).toEqual([]);
    const free = changed('demo-panel-20', { price: { minor: 0, currency: 'USD' } });
    expect(optionsOf({}, free).otherMoney).toEqual([]);
  });
});
