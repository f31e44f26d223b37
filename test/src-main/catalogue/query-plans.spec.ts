import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings, demoTours } from '../../../db/demo/demo.ts';
import type { WriteDb } from '../../../src-main/catalogue/connection.ts';
import { putItemsBack, removeItems } from '../../../src-main/catalogue/item-removal.ts';
import { findItem, listItems, saveItem, setItemState } from '../../../src-main/catalogue/items.ts';
import {
  findScenario,
  listScenarios,
  removeScenario,
  saveScenario,
} from '../../../src-main/catalogue/scenarios.ts';
import { keepEstimate, listKeptEstimates } from '../../../src-main/catalogue/reading-estimates.ts';
import { listReadings, removeReading, saveReading } from '../../../src-main/catalogue/readings.ts';
import { readSettings, saveSettings } from '../../../src-main/catalogue/settings.ts';
import { findTour, listTours, removeTour, saveTour } from '../../../src-main/catalogue/tours.ts';
import { someEstimate, someReadings } from './some-readings.ts';
import { openedDemo } from './temporary-catalogue.ts';

/** The same catalogue, noting every statement that is prepared on it. */
function noting(db: WriteDb, statements: Set<string>): WriteDb {
  return new Proxy(db, {
    get(target, name) {
      const value: unknown = Reflect.get(target, name, target);
      if (typeof value !== 'function') return value;
      return (...values: unknown[]): unknown => {
        if (name === 'prepare') statements.add(String(values[0]));
        return Reflect.apply(value, target, values);
      };
    },
  });
}

/** Every statement that the repositories use. */
function statementsUsed(write: WriteDb): string[] {
  const statements = new Set<string>();
  const db = noting(write, statements);
  for (const { id, ...item } of demoItems) saveItem(db, item, id);
  for (const { id, ...tour } of demoTours) saveTour(db, tour, id);
  for (const { id, ...scenario } of demoScenarios) saveScenario(db, scenario, id);
  saveSettings(db, demoSettings);
  setItemState(db, 'demo-phone', 'owned');
  for (const reading of someReadings) saveReading(db, reading);
  keepEstimate(db, someEstimate);
  for (const read of [listItems, listTours, listScenarios, listReadings, listKeptEstimates, readSettings])
    read(db);
  for (const find of [findItem, findTour, findScenario]) find(db, 'demo');
  putItemsBack(db, [{ id: 'a-copy', item: demoItems[0]! }]);
  removeItems(db, ['a-copy']);
  for (const remove of [removeTour, removeScenario, removeReading]) remove(db, 'gone');
  return [...statements];
}

function planOf(db: WriteDb, sql: string): string {
  const blanks = [...sql.matchAll(/\?/g)].map(() => null);
  const steps = db.prepare<null[], { detail: string }>(`EXPLAIN QUERY PLAN ${sql}`).all(...blanks);
  return steps.map((step) => step.detail).join('; ');
}

describe('the statements of the repositories', () => {
  it('never sort, because an index has the order', () => {
    const { write } = openedDemo();
    const sorting = statementsUsed(write).filter((sql) => planOf(write, sql).includes('TEMP B-TREE'));
    expect(sorting).toEqual([]);
  });

  it('walk a whole table only to list it', () => {
    const { write } = openedDemo();
    // Removing a tour looks through the settings, which are one row.
    const walking = statementsUsed(write).filter((sql) =>
      planOf(write, sql)
        .replace(/SCAN settings/, '')
        .includes('SCAN'),
    );
    expect(walking.sort()).toEqual([
      'SELECT * FROM criterion_scales',
      'SELECT * FROM items ORDER BY label COLLATE NOCASE, id',
      'SELECT * FROM kept_estimates ORDER BY item_id, measure',
      'SELECT * FROM readings ORDER BY taken_on DESC, rowid DESC',
      'SELECT * FROM scenarios ORDER BY label COLLATE NOCASE, id',
      'SELECT * FROM tours ORDER BY label COLLATE NOCASE, id',
    ]);
  });

  it('find the kits and tours that name an item by index', () => {
    const { write } = openedDemo();
    const plan = planOf(write, 'DELETE FROM items WHERE id = ?');
    expect(plan).toMatch(/SEARCH scenario_kit USING .*INDEX scenario_kit_by_item/);
    expect(plan).toMatch(/SEARCH tour_left_at_home USING .*INDEX tour_left_at_home_by_item/);
    expect(plan).toMatch(/SEARCH readings USING .*INDEX readings_by_item/);
  });

  it.each(['items', 'tours', 'scenarios'])('list %s along the index of labels', (table) => {
    const { write } = openedDemo();
    const sql = statementsUsed(write).find((text) => text.startsWith(`SELECT * FROM ${table} ORDER`))!;
    expect(planOf(write, sql)).toBe(`SCAN ${table} USING INDEX ${table}_by_label`);
  });
});
