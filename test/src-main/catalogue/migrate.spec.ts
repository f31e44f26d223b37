import { describe, expect, it, onTestFinished } from 'vitest';
import { connectToWrite, inMemory, type WriteDb } from '../../../src-main/catalogue/connection.ts';
import { listItems, saveItem } from '../../../src-main/catalogue/items.ts';
import { migrate, newestVersion, schemaVersion } from '../../../src-main/catalogue/migrate.ts';
import { migrations } from '../../../src-main/catalogue/migrations.ts';
import { listTours, saveTour } from '../../../src-main/catalogue/tours.ts';
import { listScenarios, saveScenario } from '../../../src-main/catalogue/scenarios.ts';
import { demoItems, demoScenarios, demoTours } from '../../../db/demo/demo.ts';

function migratedTo(version: number): WriteDb {
  const db = connectToWrite(inMemory);
  onTestFinished(() => void db.close());
  migrate(
    db,
    migrations.filter((step) => step.version <= version),
  );
  return db;
}

function tablesOf(db: WriteDb): unknown[] {
  return db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").pluck().all();
}

function storeItems(db: WriteDb): void {
  for (const { id, ...item } of demoItems) saveItem(db, item, id);
}

const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);

describe('migrate()', () => {
  it('undoes a step that fails halfway, and keeps the version', () => {
    const db = migratedTo(10);
    const broken = {
      version: 15,
      sql: 'CREATE TABLE half (a TEXT) STRICT; CREATE TABLE items (a TEXT) STRICT;',
    };
    expect(() => migrate(db, [broken])).toThrow(/already exists/);
    expect([schemaVersion(db), tablesOf(db).includes('half')]).toEqual([10, false]);
  });

  it('undoes a step that leaves broken references', () => {
    const db = migratedTo(20);
    const orphan = { version: 25, sql: "INSERT INTO leg_nights VALUES ('gone', 0, 0, 'wall');" };
    expect(() => migrate(db, [orphan])).toThrow(/Step 25 leaves 1 broken/);
    expect(db.prepare('SELECT count(*) FROM leg_nights').pluck().get()).toBe(0);
  });

  it('switches references on again after a failure', () => {
    const db = migratedTo(10);
    expect(() => migrate(db, [{ version: 15, sql: 'NO SQL' }])).toThrow();
    expect(db.pragma('foreign_keys', { simple: true })).toBe(1);
  });

  it('brings an empty file to the newest version', () => {
    const db = migratedTo(newestVersion(migrations));
    expect(schemaVersion(db)).toBe(40);
    expect(tablesOf(db)).toContain('criterion_scales');
  });

  it('does nothing to a catalogue of the newest version', () => {
    const db = migratedTo(newestVersion(migrations));
    const before = tablesOf(db);
    migrate(db, migrations);
    expect([schemaVersion(db), tablesOf(db)]).toEqual([40, before]);
  });

  it('makes strict tables only', () => {
    const db = migratedTo(newestVersion(migrations));
    const loose = db.prepare(
      "SELECT name FROM pragma_table_list WHERE strict = 0 AND name NOT LIKE 'sqlite%'",
    );
    expect(loose.all()).toEqual([]);
  });
});

describe('step', () => {
  it('10 to 20 keeps the items that were stored', () => {
    const db = migratedTo(10);
    storeItems(db);
    migrate(db, migrations.slice(0, 2));
    expect(listItems(db).sort(byId)).toEqual([...demoItems].sort(byId));
  });

  it('20 to 30 keeps items and tours', () => {
    const db = migratedTo(20);
    storeItems(db);
    for (const { id, ...tour } of demoTours) saveTour(db, tour, id);
    migrate(db, migrations.slice(0, 3));
    expect(listItems(db)).toHaveLength(demoItems.length);
    expect(listTours(db)).toEqual(demoTours);
  });

  it('30 to 40 keeps items and scenarios', () => {
    const db = migratedTo(30);
    storeItems(db);
    for (const { id, ...scenario } of demoScenarios) saveScenario(db, scenario, id);
    migrate(db, migrations);
    expect(listItems(db)).toHaveLength(demoItems.length);
    expect(listScenarios(db).sort(byId)).toEqual([...demoScenarios].sort(byId));
  });
});
