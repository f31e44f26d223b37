import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { demoItems, demoSettings } from '../../../../db/demo/demo.ts';
import type { KitChoice } from '../../../../shared-types/kit-search.ts';
import { kitCount } from '../../../../src-main/model/judge/kit-search/kit-space.ts';
import { searchOptions } from '../../../../src-main/workbench/kit-search/search-options.ts';
import {
  choiceOf,
  kitsToTry,
  requestedChoices,
  searchedItems,
} from '../../../../src-renderer/views/kit-search/choices.ts';

const item = (id: string) => demoItems.find((each) => each.id === id)!;

describe('searchedItems()', () => {
  it('leaves out devices and what is retired', () => {
    const retired = { ...item('demo-panel-6'), state: 'retired' as const };
    const ids = searchedItems([...demoItems.filter(({ id }) => id !== retired.id), retired]).map(
      ({ id }) => id,
    );
    expect(ids).not.toContain('demo-phone');
    expect(ids).not.toContain('demo-panel-6');
    expect(ids).toHaveLength(8);
  });
});

describe('choiceOf()', () => {
  it('has owned cables come along until the rider says otherwise', () => {
    expect(choiceOf(item('demo-cables'), {})).toBe('must');
    expect(choiceOf(item('demo-hub-cable'), {})).toBe('may');
    expect(choiceOf(item('demo-bank-20'), {})).toBe('may');
    expect(choiceOf(item('demo-cables'), { 'demo-cables': 'not' })).toBe('not');
  });
});

describe('kitsToTry()', () => {
  it('doubles with each item that may come; the hub’s cable comes with the hub', () => {
    // By hand: two banks, two panels, hub, converter, charger: 2 to the power of 7.
    expect(kitsToTry(demoItems, {}, 'EUR')).toBe(128);
    expect(kitsToTry(demoItems, { 'demo-bank-20': 'must', 'demo-panel-6': 'not' }, 'EUR')).toBe(32);
    expect(kitsToTry([{ ...item('demo-bank-10'), quantity: 3 }], {}, 'EUR')).toBe(4);
    expect(kitsToTry([{ ...item('demo-hub-3'), quantity: 3 }], {}, 'EUR')).toBe(2);
    expect(kitsToTry([], {}, 'EUR')).toBe(1);
  });
});

/** Choices, quantities and money as they may come. */
const anyItems = fc.tuple(
  ...demoItems.map((each) =>
    fc.record({
      choice: fc.constantFrom<KitChoice[]>('must', 'may', 'not'),
      quantity: fc.integer({ min: 1, max: 3 }),
      currency: fc.constantFrom('EUR', 'EUR', 'USD'),
      state: fc.constantFrom('owned' as const, 'considering' as const, 'retired' as const),
      of: fc.constant(each),
    }),
  ),
);

describe('the number of kits', () => {
  it('is the one that the search itself reckons with', () => {
    fc.assert(
      fc.property(anyItems, (drawn) => {
        const items = drawn.map(({ of, quantity, currency, state }) => ({
          ...of,
          ...{ quantity, state, price: { ...of.price, currency } },
        }));
        const choices = Object.fromEntries(drawn.map(({ of, choice }) => [of.id, choice]));
        const { options } = searchOptions(items, requestedChoices(items, choices), demoSettings);
        expect(kitsToTry(items, choices, 'EUR')).toBe(kitCount(options));
      }),
      { seed: 9, numRuns: 300, endOnFailure: true },
    );
  });
});

describe('requestedChoices()', () => {
  it('names what differs from "may"', () => {
    expect(requestedChoices(demoItems, { 'demo-bank-20': 'must', 'demo-bank-10': 'may' })).toEqual([
      { itemId: 'demo-bank-20', choice: 'must' },
      { itemId: 'demo-cables', choice: 'must' },
    ]);
  });
});
