import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../../db/demo/demo.ts';
import type { BreakEvenMap } from '../../../../shared-types/break-even.ts';
import type { Outcome } from '../../../../shared-types/outcome.ts';
import type { Preferences } from '../../../../shared-types/settings.ts';
import { findItem, saveItem } from '../../../../src-main/catalogue/items.ts';
import { listScenarios, removeScenario } from '../../../../src-main/catalogue/scenarios.ts';
import { saveSettings } from '../../../../src-main/catalogue/settings.ts';
import type { Crew } from '../../../../src-main/workbench/crew.ts';
import { createMapDesk } from '../../../../src-main/workbench/outlook/map-desk.ts';
import type { MapPlan } from '../../../../src-main/workbench/outlook/map-grid.ts';
import { createRunBook } from '../../../../src-main/workbench/run-book.ts';
import { crewHere } from '../../../support/crew-here.ts';
import { openedDemo } from '../../catalogue/temporary-catalogue.ts';

/** Small enough to be drawn in no time. */
const plan: MapPlan = { days: [2, 6], gapsDays: [1, 4, 9], histories: 20, stepMinutes: '60' };
const question = { tourId: 'demo-tour', leg: 0, scenarioIds: null };

/** A crew that counts the runs it was given. */
function countingCrew(): { readonly crew: Crew; readonly runs: readonly string[] } {
  const crew = crewHere();
  const runs: string[] = [];
  return {
    runs,
    crew: {
      ...crew,
      start: (kind, inputs, watch) => {
        runs.push(kind);
        return crew.start(kind, inputs, watch);
      },
    },
  };
}

function setup() {
  const catalogue = openedDemo();
  const book = createRunBook();
  const { crew, runs } = countingCrew();
  return { catalogue, book, runs, desk: createMapDesk(catalogue, crew, book, plan) };
}

function valueOf(outcome: Outcome<BreakEvenMap>): BreakEvenMap {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}

/** Only grams count: the lightest kit leads wherever one carries the plan. */
const onlyGrams: Preferences = {
  ...demoSettings.preferences,
  cost: { ...demoSettings.preferences.cost, weight: 0 },
  frontWheelGrams: { ...demoSettings.preferences.frontWheelGrams, weight: 0 },
  margin: { weight: 0, satisfied: 0.5, unacceptable: -1 },
  grams: { weight: 1, satisfied: 0, unacceptable: 2000 },
};

describe('a map that cannot be drawn', { timeout: 30_000 }, () => {
  it.each([
    {
      what: 'the tour is gone',
      change: { tourId: 'gone' },
      says: 'That tour is not in the catalogue (any more).',
    },
    { what: 'the leg is gone', change: { leg: 3 }, says: 'The tour has no leg 4 (any more).' },
    {
      what: 'a scenario is gone',
      change: { scenarioIds: ['gone'] },
      says: 'The scenario gone is not in the catalogue (any more).',
    },
  ])('says that $what', async ({ change, says }) => {
    const { desk, runs } = setup();
    const error = { code: 'not-found', message: says };
    expect(await desk.draw('a', { ...question, ...change })).toMatchObject({ ok: false, error });
    expect(runs).toEqual([]);
  });

  it('says that there is no scenario', async () => {
    const { desk, catalogue } = setup();
    for (const { id } of listScenarios(catalogue.read)) removeScenario(catalogue.write, id);
    expect(await desk.draw('a', question)).toMatchObject({ ok: false, error: { code: 'not-found' } });
  });

  it('answers cancelled once it is stopped, and keeps nothing', async () => {
    const { desk, book } = setup();
    const drawing = desk.draw('a', question);
    expect(book.cancel('a')).toBe(true);
    expect(await drawing).toMatchObject({ ok: false, error: { code: 'cancelled' } });
    expect(desk.rank(question, demoSettings.preferences)).toMatchObject({
      ...{ ok: false, error: { code: 'not-found' } },
    });
  });
});

describe('a drawn map', { timeout: 30_000 }, () => {
  it('has a cell for every tour of the plan, and names leg, day and scenarios', async () => {
    const { desk } = setup();
    const map = valueOf(await desk.draw('a', { ...question, leg: 2 }));
    expect(map.cells.map(({ days, gapDays }) => [days, gapDays])).toEqual(
      plan.days.flatMap((days) => plan.gapsDays.map((gap) => [days, gap])),
    );
    expect(map).toMatchObject({
      ...{ tourId: 'demo-tour', leg: 2, legLabel: 'Steppe and salt lakes', startDate: '2027-05-18' },
      ...{ histories: 20, stepMinutes: 60, confidence: 0.9 },
    });
    expect(map.scenarios.map(({ letter, method }) => `${letter} ${method}`)).toEqual([
      // In the order of the catalogue's list.
      'A banks',
      'B hub',
      'C panel',
    ]);
    expect(map.text).toContain('A  Banks only');
    expect(map.finding.length).toBeGreaterThan(0);
  });

  it('has the same figures for all gaps that put no wall on the way', async () => {
    const { cells } = valueOf(await setup().desk.draw('a', question));
    const [, four, nine] = cells;
    expect({ ...nine, gapDays: 4 }).toEqual(four);
    expect(cells[4]).not.toEqual({ ...cells[5], gapDays: 4 });
  });

  it('takes the scenarios it is asked for alone', async () => {
    const { desk } = setup();
    const map = valueOf(await desk.draw('a', { ...question, scenarioIds: ['demo-hub'] }));
    expect(map.scenarios.map(({ id }) => id)).toEqual(['demo-hub']);
    expect(new Set(map.cells.map(({ leaderId, secondId }) => `${leaderId} ${secondId}`))).toEqual(
      new Set(['demo-hub null']),
    );
  });

  it('says how far it is while it is drawn, by the days of its rows', async () => {
    const { desk, book } = setup();
    const drawing = desk.draw('a', question);
    const seen = new Set<number>();
    while (book.progress('a') !== null) {
      seen.add(book.progress('a')!);
      await new Promise((resolve) => setImmediate(resolve));
    }
    await drawing;
    // Three scenarios on 6 days, then on 2: 24 days in all.
    const shares = [...seen];
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares).toContain(0.25);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  });
});

describe('a kept map', { timeout: 30_000 }, () => {
  it('is ranked anew under other weights without a walk', async () => {
    const { desk, runs } = setup();
    const before = valueOf(await desk.draw('a', question));
    const after = valueOf(desk.rank(question, onlyGrams));
    expect(runs).toEqual(['map-row']);
    expect(after.cells.map(({ leaderId }) => leaderId)).not.toEqual(
      before.cells.map(({ leaderId }) => leaderId),
    );
    expect(valueOf(desk.rank(question, demoSettings.preferences))).toEqual(before);
  });

  it('answers at once when only weights, theme or the chosen tour were stored since', async () => {
    const { desk, catalogue, runs } = setup();
    await desk.draw('a', question);
    saveSettings(catalogue.write, { ...demoSettings, preferences: onlyGrams, theme: 'dark', tourId: null });
    const again = valueOf(await desk.draw('b', question));
    expect(runs).toEqual(['map-row']);
    expect(again).toEqual(valueOf(desk.rank(question, onlyGrams)));
  });

  it.each([
    {
      what: 'an item changed',
      change: ({ catalogue }: ReturnType<typeof setup>) => {
        const { id, ...item } = findItem(catalogue.read, 'demo-panel-20')!;
        saveItem(catalogue.write, { ...item, massG: 900 }, id);
      },
    },
    {
      what: 'the confidence changed',
      change: ({ catalogue }: ReturnType<typeof setup>) => {
        saveSettings(catalogue.write, { ...demoSettings, risk: { confidence: 0.5, useSpread: 0.1 } });
      },
    },
    {
      what: 'a scenario was taken out',
      change: ({ catalogue }: ReturnType<typeof setup>) => {
        removeScenario(catalogue.write, 'demo-hub');
      },
    },
  ])('is drawn anew when $what', async ({ change }) => {
    const all = setup();
    await all.desk.draw('a', question);
    change(all);
    await all.desk.draw('b', question);
    expect(all.runs).toEqual(['map-row', 'map-row']);
  });

  it('is not ranked for another leg or tour', async () => {
    const { desk } = setup();
    await desk.draw('a', question);
    for (const other of [
      { ...question, leg: 1 },
      { ...question, tourId: 'other' },
    ])
      expect(desk.rank(other, demoSettings.preferences)).toMatchObject({ ok: false });
  });
});
