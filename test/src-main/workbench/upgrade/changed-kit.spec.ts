import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../../db/demo/demo.ts';
import type { Item } from '../../../../shared-types/item.ts';
import { usualPlacement, usualRules } from '../../../../shared-types/scenario.ts';
import type { UpgradeQuestion } from '../../../../shared-types/upgrade.ts';
import { changedKit } from '../../../../src-main/workbench/upgrade/changed-kit.ts';

type Asked = Pick<UpgradeQuestion, 'base' | 'add' | 'remove'>;
const one = (itemId: string, quantity = 1) => ({ itemId, quantity });
const asked = (changes: Partial<Asked>): Asked => ({
  base: { as: 'owned' },
  add: [],
  remove: [],
  ...changes,
});
const kitOf = (changes: Partial<Asked>, items: readonly Item[] = demoItems) => {
  const outcome = changedKit(asked(changes), items, demoScenarios);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};
const retired = (id: string): readonly Item[] =>
  demoItems.map((item) => (item.id === id ? { ...item, state: 'retired' as const } : item));

describe('the kits of an upgrade question', () => {
  it.each<[string, Partial<Asked>, string]>([
    ['no change at all', {}, 'add'],
    ['an item that is not there', { add: [one('gone')] }, 'add.0.itemId'],
    ['a device', { add: [one('demo-phone')] }, 'add.0.itemId'],
    ['taking out what is not carried', { remove: [one('demo-hub-3')] }, 'remove.0.quantity'],
    [
      'taking out more than is carried',
      { remove: [one('demo-cables'), one('demo-bank-10', 2)] },
      'remove.1.quantity',
    ],
  ])('refuse %s, and say where', (_, changes, path) => {
    const outcome = changedKit(asked(changes), demoItems, demoScenarios);
    expect(outcome).toMatchObject({ ok: false, error: { code: 'bad-input', fields: [{ path }] } });
  });

  it('refuse what is retired, and a scenario that is not there', () => {
    const add = [one('demo-panel-20')];
    const old = changedKit(asked({ add }), retired('demo-panel-20'), demoScenarios);
    expect(old).toMatchObject({ ok: false, error: { code: 'bad-input' } });
    const gone = changedKit(
      asked({ add, base: { as: 'scenario', scenarioId: 'gone' } }),
      demoItems,
      demoScenarios,
    );
    expect(gone).toMatchObject({ ok: false, error: { code: 'not-found' } });
  });

  it('start from all that is owned but devices, used as is usual', () => {
    const { base, before } = kitOf({ add: [one('demo-panel-20')] });
    expect(base).toBe('the kit as owned');
    expect(before.kit.map(({ itemId }) => itemId)).toEqual([
      ...['demo-bank-20', 'demo-bank-10', 'demo-panel-6', 'demo-charger-30', 'demo-cables'],
    ]);
    expect(before).toMatchObject({ placement: usualPlacement, rules: usualRules });
  });

  it('start from a scenario without what is retired', () => {
    const base = { as: 'scenario', scenarioId: 'demo-banks' } as const;
    const { before } = kitOf({ base, add: [one('demo-panel-20')] }, retired('demo-bank-10'));
    expect(before.kit.map(({ itemId }) => itemId)).toEqual([
      'demo-bank-20',
      'demo-charger-30',
      'demo-cables',
    ]);
  });

  it('put in, take out, and take more of what is there', () => {
    const { after } = kitOf({
      add: [one('demo-panel-20'), one('demo-bank-20', 2)],
      remove: [one('demo-bank-10')],
    });
    expect(after.kit).toContainEqual(one('demo-panel-20'));
    expect(after.kit).toContainEqual(one('demo-bank-20', 3));
    expect(after.kit.some(({ itemId }) => itemId === 'demo-bank-10')).toBe(false);
  });

  it('leave a kit as it is when an item takes the place of itself', () => {
    const lines = [one('demo-bank-10')];
    const { before, after } = kitOf({ add: lines, remove: lines });
    expect(after).toEqual(before);
  });
});
