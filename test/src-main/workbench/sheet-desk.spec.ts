import { describe, expect, it } from 'vitest';
import type { Settings } from '../../../shared-types/settings.ts';
import { listItems, saveItem } from '../../../src-main/catalogue/items.ts';
import { saveSettings } from '../../../src-main/catalogue/settings.ts';
import { createComparisonDesk } from '../../../src-main/workbench/comparison-desk.ts';
import { createSwingsDesk } from '../../../src-main/workbench/outlook/swings-desk.ts';
import { createRunBook } from '../../../src-main/workbench/run-book.ts';
import { createSheetDesk, type SheetQuestion } from '../../../src-main/workbench/sheet-desk.ts';
import { fewHistories, withHistories } from '../../support/demo-ground.ts';
import { toldCrew } from '../../support/told-crew.ts';
import { openedDemo } from '../catalogue/temporary-catalogue.ts';

const two: SheetQuestion = {
  tourId: 'demo-tour',
  scenarioIds: ['demo-banks', 'demo-hub'],
  withSwings: false,
};

function setup() {
  const catalogue = openedDemo();
  const settings = withHistories(fewHistories);
  saveSettings(catalogue.write, settings);
  const told = toldCrew();
  const book = createRunBook();
  const comparisons = createComparisonDesk(catalogue, told.crew, book);
  const swings = createSwingsDesk(catalogue, told.crew, book);
  const desk = createSheetDesk(catalogue, comparisons, swings);
  const gather = (changes: Partial<SheetQuestion> = {}) => desk.gather('a-run', { ...two, ...changes });
  return { catalogue, settings, book, ...told, gather };
}

const weighed = ['cost', 'grams', 'frontWheelGrams', 'margin'] as const;

describe('a sheet desk', () => {
  it('says that a tour or a scenario is gone, and walks nothing', async () => {
    const { gather, started } = setup();
    expect(await gather({ tourId: 'gone' })).toMatchObject({ ok: false, error: { code: 'not-found' } });
    expect(await gather({ scenarioIds: ['gone'] })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
    expect(started).toEqual([]);
  });

  it('answers `cancelled` when the comparison is stopped', async () => {
    const { gather, hold, book } = setup();
    hold('scenario');
    const gathered = gather();
    expect(book.cancel('a-run')).toBe(true);
    expect(await gathered).toMatchObject({ ok: false, error: { code: 'cancelled' } });
  });

  it('answers `cancelled` when the search for what would change the answer is stopped, and keeps the comparison', async () => {
    const { gather, hold, book, started } = setup();
    await gather();
    hold('figures');
    const gathered = gather({ withSwings: true });
    await expect.poll(() => started).toEqual(['scenario', 'figures']);
    expect(book.cancel('a-run')).toBe(true);
    expect(await gathered).toMatchObject({ ok: false, error: { code: 'cancelled' } });
    expect(await gather()).toMatchObject({ ok: true });
    expect(started).toEqual(['scenario', 'figures']);
  });

  it('says why one scenario has nothing that could change, and looks for nothing', async () => {
    const { gather, started } = setup();
    expect(await gather({ scenarioIds: ['demo-banks'], withSwings: true })).toMatchObject({
      ok: true,
      value: { swings: { why: 'With one scenario there is no order to change: compare two or more.' } },
    });
    expect(started).toEqual(['scenario']);
  });

  it('looks for what would change the answer only when asked', async () => {
    const { gather, started } = setup();
    expect(await gather()).toMatchObject({
      ok: true,
      value: { swings: { why: expect.stringContaining('without it') as string } },
    });
    expect(started).toEqual(['scenario']);
    expect(await gather({ withSwings: true })).toMatchObject({
      ok: true,
      value: { swings: { tourId: 'demo-tour', scenarios: [{ id: expect.any(String) as string }, {}] } },
    });
    expect(started).toContain('figures');
  });

  it('walks nothing for a second sheet of the same question', async () => {
    const { gather, started } = setup();
    const first = await gather({ withSwings: true });
    const walks = started.filter((kind) => kind === 'scenario').length;
    expect(walks).toBe(1);
    const second = await gather({ withSwings: true });
    expect(started.filter((kind) => kind === 'scenario')).toHaveLength(walks);
    expect(second).toEqual(first);
  });

  it('walks anew once an item has changed', async () => {
    const { gather, started, catalogue } = setup();
    await gather();
    const { id, ...bank } = listItems(catalogue.read).find(({ kind }) => kind === 'bank')!;
    saveItem(catalogue.write, { ...bank, massG: bank.massG + 1 }, id);
    await gather();
    expect(started).toEqual(['scenario', 'scenario']);
  });

  it('ranks anew under other weights, and walks nothing', async () => {
    const { gather, started, catalogue, settings } = setup();
    const firsts = new Set<string>();
    const ranked = async (only: (typeof weighed)[number]) => {
      const scales = Object.entries(settings.preferences).map(([name, scale]) => [
        name,
        weighed.some((each) => each === name) ? { ...scale, weight: name === only ? 1 : 0 } : scale,
      ]);
      const preferences = Object.fromEntries(scales) as Settings['preferences'];
      saveSettings(catalogue.write, { ...settings, preferences });
      const gathered = await gather();
      if (!gathered.ok) throw new Error(gathered.error.message);
      expect(gathered.value.inputs.settings.preferences).toEqual(preferences);
      const { scenarios } = gathered.value.comparison;
      firsts.add(scenarios[0]!.id);
      return scenarios.map(({ values }) => values[only]);
    };
    const ascending = (values: readonly number[]) => values.toSorted((a, b) => a - b);
    for (const only of ['cost', 'grams', 'frontWheelGrams'] as const) {
      const values = await ranked(only);
      expect(values).toEqual(ascending(values));
    }
    const margins = await ranked('margin');
    expect(margins).toEqual(ascending(margins).toReversed());
    // Each of the two comes first by something.
    expect(firsts.size).toBe(2);
    expect(started).toEqual(['scenario']);
  });

  it('hands over what the comparison was made from: what is carried or comes along, and no more', async () => {
    const { gather, catalogue } = setup();
    const gathered = await gather();
    if (!gathered.ok) throw new Error(gathered.error.message);
    const { inputs } = gathered.value;
    expect(inputs.tour.id).toBe('demo-tour');
    expect(inputs.scenarios.map(({ id }) => id).toSorted()).toEqual(['demo-banks', 'demo-hub']);
    const carried = inputs.scenarios.flatMap(({ kit }) => kit.map(({ itemId }) => itemId));
    const ids = inputs.items.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(carried));
    expect(ids).toContain('demo-phone');
    const others = listItems(catalogue.read).filter(({ id }) => !ids.includes(id));
    expect(others.length).toBeGreaterThan(0);
    for (const { id, kind } of others) {
      expect(kind).not.toBe('device');
      expect(carried).not.toContain(id);
    }
  });
});
