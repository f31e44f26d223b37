import { describe, expect, it } from 'vitest';
import type { CallInput } from '../../../../shared-types/contract.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';

type Asked = CallInput<'stops.plan'>;

const devices = ['phone', 'navigation', 'camera', 'light', 'reader'].map((name) => `demo-${name}`);
const banks = ['demo-bank-20', 'demo-bank-10'];

const statesAt = (share: number, itemIds: readonly string[] = [...devices, ...banks]): Asked['states'] =>
  itemIds.map((itemId) => ({ itemId, copy: 0, state: { as: 'share', share } }));

const asked: Asked = {
  tourId: 'demo-tour',
  scenarioId: 'demo-banks',
  minutes: 60,
  outlets: 1,
  hoursToWall: 48,
  states: statesAt(0.2),
  use: { as: 'leg', leg: 0 },
};

describe('stops.plan', () => {
  it.each([
    { what: 'tour', input: { ...asked, tourId: 'gone' } },
    { what: 'scenario', input: { ...asked, scenarioId: 'gone' } },
    { what: 'leg', input: { ...asked, use: { as: 'leg' as const, leg: 59 } } },
  ])('says so when the $what is not there', async ({ input }) => {
    const { call, faults } = openedWorkbench();
    expect(await call('stops.plan', input)).toMatchObject({ ok: false, error: { code: 'not-found' } });
    expect(faults).toEqual([]);
  });

  it.each([
    {
      what: 'a device that is not carried',
      change: { states: statesAt(0.2, ['gone']) },
      path: 'states.0.itemId',
    },
    { what: 'a state left out', change: { states: statesAt(0.2, devices) }, path: 'states' },
    {
      what: 'a state given twice',
      change: { states: [...statesAt(0.2), ...statesAt(0.3, ['demo-phone'])] },
      path: 'states.7',
    },
    {
      what: 'more lights lit than there are',
      change: {
        states: [...statesAt(0.2, [...devices, 'demo-bank-10']), lit('demo-bank-20', 5)],
      },
      path: 'states.6.state.lit',
    },
    {
      what: 'lights of a device',
      change: { states: [...statesAt(0.2, [...devices.slice(1), ...banks]), lit('demo-phone', 1)] },
      path: 'states.6.state',
    },
    {
      what: 'use of a bank',
      change: { use: { as: 'own' as const, needs: [{ itemId: 'demo-bank-20', copy: 0, needWh: 3 }] } },
      path: 'use.needs.0.itemId',
    },
  ])('refuses $what, and says where', async ({ change, path }) => {
    const { call } = openedWorkbench();
    const outcome = await call('stops.plan', { ...asked, ...change });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'bad-input' } });
    expect(outcome.ok ? [] : outcome.error.fields.map((field) => field.path)).toContain(path);
  });

  it.each([
    { what: 'no outlet', input: { ...asked, outlets: 0 }, note: /Without a free outlet/ },
    { what: 'all full', input: { ...asked, states: statesAt(1) }, note: /are full/ },
  ])('answers with nothing to plug in: $what', async ({ input, note }) => {
    const { value } = openedWorkbench();
    const plan = await value('stops.plan', input);
    expect(plan.lanes).toEqual([]);
    expect(plan.steps).toEqual([]);
    expect(plan.notes.some((text) => note.test(text))).toBe(true);
    expect(plan.mustHaves.servedWh).toBeCloseTo(plan.without.mustHavesWh, 9);
  });

  it('says so when the kit has no wall charger', async () => {
    const { value } = openedWorkbench();
    await value('items.setState', { id: 'demo-charger-30', state: 'retired' });
    const plan = await value('stops.plan', asked);
    expect(plan.lanes).toEqual([]);
    expect(plan.notes[0]).toMatch(/no wall charger/);
  });

  it('plans the stop: must-haves first, no port twice, and what is served grows', async () => {
    const { value } = openedWorkbench();
    const plan = await value('stops.plan', asked);
    expect(plan.steps[0]!.minute).toBe(0);
    expect(plan.mustHaves.servedWh).toBeGreaterThan(plan.without.mustHavesWh + 1);
    expect(plan.mustHaves.servedWh).toBeLessThanOrEqual(plan.mustHaves.needWh + 1e-9);
    for (const { spans } of plan.lanes)
      spans.forEach(({ fromMinute, toMinute }, place) => {
        expect(fromMinute).toBeLessThan(toMinute);
        expect(fromMinute).toBeGreaterThanOrEqual(spans[place - 1]?.toMinute ?? 0);
        expect(toMinute).toBeLessThanOrEqual(asked.minutes);
      });
    expect(plan.cautions.join(' ')).toMatch(/Lithium cells/);
  });

  it('takes the middle of what lights tell, and says so', async () => {
    const { value } = openedWorkbench();
    const states = [...statesAt(0.2, [...devices, 'demo-bank-10']), lit('demo-bank-20', 2)];
    const plan = await value('stops.plan', { ...asked, states });
    const bank = plan.stores.find(({ itemId }) => itemId === 'demo-bank-20')!;
    expect(bank.beforeWh / bank.capacityWh).toBeCloseTo(0.375, 9);
    expect(plan.notes.join(' ')).toMatch(/25\u202f% to 50\u202f%.*37.5\u202f%/);
  });

  it("counts the rider's own use and nothing besides", async () => {
    const { value } = openedWorkbench();
    const needs = [{ itemId: 'demo-phone', copy: 0, needWh: 30 }];
    const plan = await value('stops.plan', { ...asked, use: { as: 'own', needs } });
    expect(plan.mustHaves.needWh + plan.niceToHaves.needWh).toBe(30);
  });

  it('tells the pieces of an item apart', async () => {
    const { value } = openedWorkbench();
    const scenario = (await value('scenarios.list', {})).find(({ id }) => id === asked.scenarioId)!;
    const { id, ...draft } = scenario;
    const kit = draft.kit.map((line) => (line.itemId === 'demo-bank-10' ? { ...line, quantity: 2 } : line));
    await value('scenarios.save', { id, scenario: { ...draft, kit } });
    const second = { itemId: 'demo-bank-10', copy: 1, state: { as: 'share', share: 0.9 } } as const;
    const plan = await value('stops.plan', { ...asked, states: [...asked.states, second] });
    const labels = plan.stores.filter(({ itemId }) => itemId === 'demo-bank-10').map(({ label }) => label);
    expect(labels).toEqual(['10 Ah bank, 10 W in (1 of 2)', '10 Ah bank, 10 W in (2 of 2)']);
  });
});

function lit(itemId: string, lights: number): Asked['states'][number] {
  return { itemId, copy: 0, state: { as: 'lights', lit: lights } };
}
