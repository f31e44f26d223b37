import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../db/demo/demo.ts';
import type { Item } from '../../../shared-types/item.ts';
import { baseIn, baseLines, offeredItems, stillOffered } from '../../../src-renderer/state/upgrade-choice.ts';

const banks = { as: 'scenario', scenarioId: 'demo-banks' } as const;
const idsOf = (lines: readonly { readonly item: Item }[]) => lines.map(({ item }) => item.id);

describe('the choices of an upgrade check', () => {
  it('fall back on the kit as owned where the scenario is gone', () => {
    expect(baseIn(demoScenarios, banks)).toEqual(banks);
    expect(baseIn([], banks)).toEqual({ as: 'owned' });
  });

  it('let go out what is owned, or what the scenario carries and is not retired', () => {
    expect(idsOf(baseLines(demoItems, demoScenarios, { as: 'owned' }))).toEqual([
      ...['demo-bank-20', 'demo-bank-10', 'demo-panel-6', 'demo-charger-30', 'demo-cables'],
    ]);
    const without = demoItems.map((item) =>
      item.id === 'demo-bank-10' ? { ...item, state: 'retired' as const } : item,
    );
    expect(idsOf(baseLines(without, demoScenarios, banks))).toEqual([
      ...['demo-bank-20', 'demo-charger-30', 'demo-cables'],
    ]);
    expect(baseLines([], demoScenarios, banks)).toEqual([]);
  });

  it('let come in all in use but devices, what is considered first', () => {
    const offered = offeredItems(demoItems);
    const states = offered.map(({ state }) => state);
    expect(states.lastIndexOf('considering')).toBe(states.indexOf('owned') - 1);
    expect(offered.some(({ kind }) => kind === 'device')).toBe(false);
    expect(offered.length).toBeGreaterThan(5);
  });

  it('drop lines that are gone, and pieces that are', () => {
    const lines = [
      { itemId: 'a', quantity: 3 },
      { itemId: 'gone', quantity: 1 },
    ];
    expect(stillOffered(lines, (itemId) => (itemId === 'a' ? 2 : 0))).toEqual([{ itemId: 'a', quantity: 2 }]);
  });
});
