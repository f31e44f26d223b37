import { describe, expect, it } from 'vitest';
import type { ItemDraft } from '../../../../shared-types/item.ts';
import { criterionNames, type Preferences } from '../../../../shared-types/settings.ts';
import { crewHere } from '../../../support/crew-here.ts';
import { expectNear } from '../../../support/near.ts';
import { openedWorkbench, type TestWorkbench } from '../../../support/open-workbench.ts';

const all = { runId: 'spec', tourId: 'demo-tour', scenarioIds: null } as const;

async function marginOf(workbench: TestWorkbench, id: string): Promise<number> {
  const { scenarios } = await workbench.value('comparison.run', { ...all, scenarioIds: [id] });
  return scenarios[0]!.margin.value;
}

const lamp: ItemDraft = {
  kind: 'device',
  label: 'Camp lamp',
  state: 'owned',
  quantity: 1,
  massG: 80,
  price: { minor: 2000, currency: 'EUR' },
  lifeYears: null,
  resale: null,
  mount: 'rear-rack',
  notes: '',
  capacity: { as: 'wh', wh: 6 },
  health: 1,
  spareBatteries: 0,
  input: { standard: 'bc-1.2', powerW: 5, cable: 'a-plug' },
  use: { as: 'activity', ridingW: 0, stopW: 0, eveningW: 1.5, nightW: 0 },
  pluggedW: 0,
  importance: 'must-have',
};

/** Each comparison here is done in one thread, with all its histories. */
const patience = { timeout: 60_000 };

describe('comparison.run', patience, () => {
  it('refuses a tour and a scenario that are not there', async () => {
    const { call } = openedWorkbench();
    expect(await call('comparison.run', { ...all, tourId: 'gone' })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
    expect(await call('comparison.run', { ...all, scenarioIds: ['gone'] })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  });

  it('compares the three methods of the demo, best first', async () => {
    const { value } = openedWorkbench();
    const { scenarios, scores, advice, tour } = await value('comparison.run', all);
    expect(scenarios.map(({ method }) => method).sort()).toEqual(['banks', 'hub', 'panel']);
    expect(scores.map(({ id }) => id)).toEqual(scenarios.map(({ id }) => id));
    expect(scores[0]).toMatchObject({ rank: 1 });
    expect(advice.answer).toContain(scenarios[0]!.label);
    expect(tour).toMatchObject({ days: 24, startDate: '2027-05-03' });
  });

  it('balances the energy of every day of every scenario', async () => {
    const { value } = openedWorkbench();
    const { scenarios } = await value('comparison.run', all);
    for (const { days, label } of scenarios) {
      expect(days).toHaveLength(24);
      for (const day of days) {
        const income = day.wall + day.panel + day.hub;
        expectNear(
          day.used + day.lost + day.spilled + day.stored,
          income,
          1e-9 * (income + 1),
          `${label}, day ${day.day}`,
        );
      }
    }
  });

  it('gives owned kit for nothing and a hub with its wheel building', async () => {
    const { value } = openedWorkbench();
    const { scenarios } = await value('comparison.run', all);
    const of = (id: string) => scenarios.find((scenario) => scenario.id === id)!;
    expect(of('demo-banks').values.cost).toBe(0);
    // 110 hub + 140 wheel building + 86 converter + 12 cable.
    expect(of('demo-hub').values.cost).toBe(348);
    expect(of('demo-hub').values.frontWheelGrams).toBeGreaterThan(300);
  });

  it('says which figures were measured', async () => {
    const { value } = openedWorkbench();
    const { scenarios } = await value('comparison.run', { ...all, scenarioIds: ['demo-banks'] });
    const bases = scenarios[0]!.assumptions.map(({ name, basis }) => [name, basis]);
    expect(bases).toContainEqual(['20 Ah bank, 18 W in', 'measured']);
    expect(bases).toContainEqual(['10 Ah bank, 10 W in', 'label']);
  });

  it('falls in margin with a device more, and rises again when it stays at home', async () => {
    const workbench = openedWorkbench();
    const before = await marginOf(workbench, 'demo-banks');
    const { id } = await workbench.value('items.save', { item: lamp });
    expect(await marginOf(workbench, 'demo-banks')).toBeLessThan(before);
    const [tour] = await workbench.value('tours.list', {});
    const { id: tourId, ...draft } = tour!;
    await workbench.value('tours.save', { id: tourId, tour: { ...draft, leftAtHome: [id] } });
    expect(await marginOf(workbench, 'demo-banks')).toBe(before);
  });

  it('takes an empty kit for what it is', async () => {
    const { value } = openedWorkbench();
    const [scenario] = await value('scenarios.list', {});
    const { id: _, ...draft } = scenario!;
    const empty = await value('scenarios.save', { scenario: { ...draft, label: 'Nothing', kit: [] } });
    const { scenarios } = await value('comparison.run', { ...all, scenarioIds: [empty.id] });
    const [result] = scenarios;
    expect(result).toMatchObject({ carries: 'nothing', values: { cost: 0, grams: 0 } });
    expect(result!.margin.value).toBeGreaterThanOrEqual(-1);
    expect(result!.margin.value).toBeLessThan(0);
    expect(JSON.stringify(result)).not.toContain('null,null');
  });

  it('leaves a retired item out of the kit', async () => {
    const { value } = openedWorkbench();
    await value('items.setState', { id: 'demo-panel-20', state: 'retired' });
    const { scenarios } = await value('comparison.run', { ...all, scenarioIds: ['demo-panel'] });
    expect(scenarios[0]!.carries).not.toContain('panel');
    expect(scenarios[0]!.days.every((day) => day.panel === 0)).toBe(true);
  });

  it('changes little with the length of a step', async () => {
    // Enough that what two lengths of step have in common outweighs a history at the edge.
    const { value } = openedWorkbench({}, crewHere(), 100);
    const settings = await value('settings.get', {});
    const margins = async (stepMinutes: '5' | '15' | '30' | '60'): Promise<Record<string, number>> => {
      await value('settings.save', { settings: { ...settings, stepMinutes } });
      const { scenarios } = await value('comparison.run', all);
      return Object.fromEntries(scenarios.map(({ id, margin }) => [id, margin.value]));
    };
    const fine = await margins('5');
    for (const step of ['15', '30', '60'] as const) {
      for (const [id, margin] of Object.entries(await margins(step))) {
        // A margin is a factor on all use: near 0 three parts in a hundred of it are three points.
        expectNear(margin, fine[id]!, 0.03 * (1 + fine[id]!), `margin of ${id} in steps of ${step} min`);
      }
    }
  });
});

describe('comparison.rank', patience, () => {
  it('ranks anew under other weights, without another simulation', async () => {
    const { value } = openedWorkbench();
    const { preferences } = await value('settings.get', {});
    const run = await value('comparison.run', all);
    const onlyGrams = {
      ...preferences,
      cost: { ...preferences.cost, weight: 0 },
      margin: { ...preferences.margin, weight: 0 },
      frontWheelGrams: { ...preferences.frontWheelGrams, weight: 0 },
    };
    const { scores } = await value('comparison.rank', { tourId: 'demo-tour', preferences: onlyGrams });
    // Banks alone are lightest, but their margin is beyond what the demo's rider accepts: the next lightest leads.
    const byGrams = run.scenarios.toSorted((a, b) => a.values.grams - b.values.grams).map(({ id }) => id);
    expect(byGrams[0]).toBe('demo-banks');
    expect(scores.map(({ id }) => id)).toEqual([byGrams[1], byGrams[2], 'demo-banks']);
  });

  it('leaves out what passes a limit and says why, and counts an extra once the rider does', async () => {
    const { value } = openedWorkbench();
    const { preferences } = await value('settings.get', {});
    const run = await value('comparison.run', all);
    const { scores, advice } = await value('comparison.rank', {
      tourId: 'demo-tour',
      preferences: {
        ...preferences,
        limits: { ...preferences.limits, toBuy: 0 },
        minutesLost: { ...preferences.minutesLost, counted: true },
      },
    });
    const costly = run.scenarios.filter(({ values }) => values.cost > 0).map(({ id }) => id);
    const out = scores.filter(({ excludedBy }) => excludedBy.length > 0);
    expect([costly.length > 0, out.map(({ id }) => id).sort()]).toEqual([true, costly.sort()]);
    expect(scores.slice(-out.length)).toEqual(out);
    expect(advice.notes.filter((note) => note.includes(' is left out: it costs '))).toHaveLength(out.length);
    expect(
      scores.every(({ parts, notKnown }) => parts.minutesLost !== undefined && notKnown.length === 0),
    ).toBe(true);
  });

  it('refuses weights that are all zero', async () => {
    const { value, call } = openedWorkbench();
    const { preferences } = await value('settings.get', {});
    const weightless = criterionNames.map((name) => [name, { ...preferences[name], weight: 0 }]);
    const none = { ...preferences, ...(Object.fromEntries(weightless) as Partial<Preferences>) };
    expect(await call('comparison.rank', { tourId: 'demo-tour', preferences: none })).toMatchObject({
      ok: false,
      error: { code: 'bad-input' },
    });
  });
});
