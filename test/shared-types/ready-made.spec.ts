import { describe, expect, it } from 'vitest';
import { demoItems } from '../../db/demo/demo.ts';
import type { Item } from '../../shared-types/item.ts';
import { readyMadeScenarios } from '../../shared-types/ready-made.ts';
import { scenarioDraft } from '../../shared-types/scenario.ts';

/** By method: what it carries, or why it can't be made. */
function told(items: readonly Item[]): Readonly<Record<string, readonly string[] | string>> {
  return Object.fromEntries(
    readyMadeScenarios(items).map((made) => [
      made.method,
      'draft' in made ? made.draft.kit.map(({ itemId }) => itemId) : made.missing,
    ]),
  );
}

const demo = (...ids: readonly string[]): readonly Item[] => demoItems.filter(({ id }) => ids.includes(id));
const retired = (item: Item): Item => ({ ...item, state: 'retired' });

describe('the three methods ready made', () => {
  it('take all owned banks, the strongest panel, or the hub with its converter and cable', () => {
    expect(told(demoItems)).toEqual({
      banks: ['demo-bank-20', 'demo-bank-10', 'demo-charger-30', 'demo-cables'],
      panel: ['demo-panel-20', 'demo-bank-20', 'demo-charger-30', 'demo-cables'],
      hub: [
        'demo-hub-3',
        'demo-converter',
        'demo-hub-cable',
        'demo-bank-20',
        'demo-charger-30',
        'demo-cables',
      ],
    });
  });

  it('are scenarios that the catalogue takes', () => {
    for (const made of readyMadeScenarios(demoItems))
      expect('draft' in made && scenarioDraft.safeParse(made.draft).success).toBe(true);
  });

  it('say what is missing', () => {
    expect(told([])).toEqual({
      banks: 'There is no power bank.',
      panel: 'There is no panel.',
      hub: 'There is no generator hub with a converter to charge from it.',
    });
    expect(told(demo('demo-panel-20', 'demo-hub-3', 'demo-converter'))).toMatchObject({
      panel: 'There is no power bank to buffer the panel.',
      hub: 'There is no power bank to buffer the hub.',
    });
    expect(told(demo('demo-bank-20', 'demo-hub-3'))['hub']).toContain('with a converter');
  });

  it('take what is only considered where nothing of its kind is owned, and never what is retired', () => {
    const items = demoItems.map((item) =>
      item.id === 'demo-bank-20' ? { ...item, state: 'considering' as const } : item,
    );
    expect(told(items)['banks']).toEqual(['demo-bank-10', 'demo-charger-30', 'demo-cables']);
    const without = items.map((item) => (item.id === 'demo-bank-10' ? retired(item) : item));
    expect(told(without)['banks']).toEqual(['demo-bank-20', 'demo-charger-30', 'demo-cables']);
  });

  it('put one hub and one converter on the bicycle, and all of the rest', () => {
    const items = demoItems.map((item) => ({ ...item, quantity: 2 }));
    const hub = readyMadeScenarios(items).find(({ method }) => method === 'hub')!;
    const quantities = 'draft' in hub ? hub.draft.kit.map(({ quantity }) => quantity) : [];
    expect(quantities).toEqual([1, 1, 2, 2, 2, 2]);
  });
});
