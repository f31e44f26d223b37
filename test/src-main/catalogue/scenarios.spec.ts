import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../db/demo/demo.ts';
import { scenarioDraft, type Scenario } from '../../../shared-types/scenario.ts';
import {
  findScenario,
  listScenarios,
  removeScenario,
  saveScenario,
} from '../../../src-main/catalogue/scenarios.ts';
import { randomScenario } from './random-drafts.ts';
import { opened, openedDemo } from './temporary-catalogue.ts';

const banksOnly = demoScenarios[0]!;
const { id: banksId, ...draft } = banksOnly;

describe('saveScenario()', () => {
  it('refuses a kit with an item that is missing', () => {
    const { read, write } = openedDemo();
    const kit = [...draft.kit, { itemId: 'gone', quantity: 1 }];
    expect(saveScenario(write, { ...draft, kit })).toEqual({
      ok: false,
      error: {
        code: 'not-found',
        message: 'The item "gone" is not in the catalogue (any more).',
        fields: [{ path: 'scenario.kit.4.itemId', allowed: 'an item in the catalogue', got: '"gone"' }],
      },
    });
    expect(listScenarios(read)).toHaveLength(demoScenarios.length);
  });

  it('names every missing item and keeps the old kit', () => {
    const { read, write } = openedDemo();
    const kit = ['gone', 'demo-phone', 'lost'].map((itemId) => ({ itemId, quantity: 1 }));
    const outcome = saveScenario(write, { ...draft, kit }, banksId);
    const paths = outcome.ok ? [] : outcome.error.fields.map((field) => field.path);
    expect(paths).toEqual(['scenario.kit.0.itemId', 'scenario.kit.2.itemId']);
    expect(findScenario(read, banksId)).toEqual(banksOnly);
  });

  it('gives a new scenario an id of its own', () => {
    const { read, write } = openedDemo();
    const outcome = saveScenario(write, draft);
    expect(outcome.ok && findScenario(read, outcome.value.id)).toEqual(outcome.ok && outcome.value);
    expect(listScenarios(read)).toHaveLength(demoScenarios.length + 1);
  });

  it('replaces the kit by a smaller one', () => {
    const { read, write } = openedDemo();
    const smaller = { ...draft, kit: [{ itemId: 'demo-bank-10', quantity: 3 }] };
    saveScenario(write, smaller, banksId);
    expect(findScenario(read, banksId)).toEqual({ ...smaller, id: banksId });
  });

  it('gives any scenario back exactly as it was saved', () => {
    const { read, write } = openedDemo();
    for (const { id } of demoScenarios) removeScenario(write, id);
    const itemIds = demoItems.map((item) => item.id);
    fc.assert(
      fc.property(randomScenario(itemIds), (random) => {
        expect(scenarioDraft.safeParse(random).success).toBe(true);
        const saved: Scenario = { ...random, id: 'random' };
        expect(saveScenario(write, random, 'random')).toEqual({ ok: true, value: saved });
        expect(listScenarios(read)).toEqual([saved]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('removeScenario()', () => {
  it('is null for an id that names nothing', () => {
    expect(removeScenario(opened().write, 'gone')).toBeNull();
  });

  it('gives back the scenario, which can be put back', () => {
    const { read, write } = openedDemo();
    expect(removeScenario(write, banksId)).toEqual(banksOnly);
    expect(findScenario(read, banksId)).toBeNull();
    saveScenario(write, draft, banksId);
    expect(findScenario(read, banksId)).toEqual(banksOnly);
  });
});

describe('listScenarios()', () => {
  it('orders by label without regard to case, then id', () => {
    const { read, write } = opened();
    const labels = { c: 'sun', b: 'Hub', a: 'Sun' };
    for (const [id, label] of Object.entries(labels)) saveScenario(write, { ...draft, kit: [], label }, id);
    expect(listScenarios(read).map((scenario) => scenario.id)).toEqual(['b', 'a', 'c']);
  });
});
