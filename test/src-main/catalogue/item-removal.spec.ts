import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoTours } from '../../../db/demo/demo.ts';
import { putItemsBack, removeItems } from '../../../src-main/catalogue/item-removal.ts';
import { listItems, saveItem } from '../../../src-main/catalogue/items.ts';
import { saveTour } from '../../../src-main/catalogue/tours.ts';
import { openedDemo } from './temporary-catalogue.ts';

const [anItem] = demoItems;
const [scenario] = demoScenarios;

describe('removeItems()', () => {
  it('keeps an item that a scenario carries, and the others with it', () => {
    const { write } = openedDemo();
    const spare = saveItem(write, anItem!, 'spare');
    const carried = scenario!.kit[0]!.itemId;
    const outcome = removeItems(write, [spare.id, carried]);
    expect(outcome.ok ? null : outcome.error.code).toBe('in-use');
    expect(outcome.ok ? '' : outcome.error.message).toMatch(
      /is carried by the scenario .+: take it out there/,
    );
    expect(listItems(write)).toHaveLength(demoItems.length + 1);
  });

  it('keeps an item that a tour leaves at home', () => {
    const { write } = openedDemo();
    const { id: tourId, ...tour } = demoTours[0]!;
    saveItem(write, anItem!, 'spare');
    saveTour(write, { ...tour, leftAtHome: ['spare'] }, tourId);
    const outcome = removeItems(write, ['spare']);
    expect(outcome.ok ? '' : outcome.error.message).toMatch(`is left at home on the tour ${tour.label}`);
  });

  it('removes nothing when one of them is not there', () => {
    const { write } = openedDemo();
    saveItem(write, anItem!, 'spare');
    expect(removeItems(write, ['spare', 'gone']).ok).toBe(false);
    expect(listItems(write)).toHaveLength(demoItems.length + 1);
  });

  it('answers what it removed, fit to be put back as it was', () => {
    const { write } = openedDemo();
    for (const [place, item] of demoItems.entries()) saveItem(write, item, `spare-${place}`);
    const before = listItems(write);
    const ids = demoItems.map((_, place) => `spare-${place}`);
    const outcome = removeItems(write, ids);
    expect(listItems(write)).toHaveLength(demoItems.length);
    if (outcome.ok)
      putItemsBack(
        write,
        outcome.value.map(({ id, ...item }) => ({ id, item: item as (typeof demoItems)[0] })),
      );
    expect(listItems(write)).toEqual(before);
  });
});
