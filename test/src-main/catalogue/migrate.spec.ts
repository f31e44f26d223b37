import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import type { WriteDb } from '../../../src-main/catalogue/connection.ts';
import { listItems } from '../../../src-main/catalogue/items.ts';
import { migrate, newestVersion, schemaVersion } from '../../../src-main/catalogue/migrate.ts';
import { migrations } from '../../../src-main/catalogue/migrations.ts';
import { listScenarios, removeScenario } from '../../../src-main/catalogue/scenarios.ts';
import { readSettings } from '../../../src-main/catalogue/settings.ts';
import { listTours } from '../../../src-main/catalogue/tours.ts';
import {
  filledAt40,
  migratedTo,
  migrateTo,
  oldScenarios,
  oldSettings,
  oldTour,
  storeItems,
  storeOldScenarios,
  storeOldTour,
} from './older-catalogue.ts';

function tablesOf(db: WriteDb): unknown[] {
  return db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").pluck().all();
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
    expect(schemaVersion(db)).toBe(70);
    expect(tablesOf(db)).toContain('criterion_scales');
  });

  it('does nothing to a catalogue of the newest version', () => {
    const db = migratedTo(newestVersion(migrations));
    const before = tablesOf(db);
    migrate(db, migrations);
    expect([schemaVersion(db), tablesOf(db)]).toEqual([70, before]);
  });

  it('makes strict tables only', () => {
    const db = migratedTo(newestVersion(migrations));
    const loose = db.prepare(
      "SELECT name FROM pragma_table_list WHERE strict = 0 AND name NOT LIKE 'sqlite%'",
    );
    expect(loose.all()).toEqual([]);
  });
});

function columnsOf(db: WriteDb, table: string): unknown[] {
  return db.prepare('SELECT name FROM pragma_table_info(?)').pluck().all(table);
}

describe('step', () => {
  it('10 to 20 keeps the items that were stored', () => {
    const db = migratedTo(10);
    storeItems(db);
    migrateTo(db, 20);
    expect(listItems(db).sort(byId)).toEqual([...demoItems].sort(byId));
  });

  it('20 to 30 keeps items and tours', () => {
    const db = migratedTo(20);
    storeItems(db);
    storeOldTour(db);
    const before = db.prepare('SELECT * FROM legs').all();
    migrateTo(db, 30);
    expect(listItems(db)).toHaveLength(demoItems.length);
    expect([db.prepare('SELECT * FROM legs').all(), before.length]).toEqual([before, 2]);
  });

  it('30 to 40 keeps items and scenarios', () => {
    const db = migratedTo(30);
    storeItems(db);
    storeOldScenarios(db);
    const before = db.prepare('SELECT * FROM scenarios').all();
    migrateTo(db, 40);
    expect(listItems(db)).toHaveLength(demoItems.length);
    expect([db.prepare('SELECT * FROM scenarios').all(), before.length]).toEqual([before, 3]);
  });

  it('40 to 50 keeps scenarios, kits and every placement', () => {
    const db = filledAt40();
    migrateTo(db, 50);
    expect(listScenarios(db)).toEqual(oldScenarios);
  });

  it('40 to 50 leaves no placement in the scenarios', () => {
    const db = filledAt40();
    migrateTo(db, 50);
    const columns = ['id', 'label', 'method', 'at_wall', 'unsteady_source', 'notes'];
    expect(columnsOf(db, 'scenarios')).toEqual(columns);
    removeScenario(db, 'old-a');
    expect(db.prepare('SELECT count(*) FROM scenario_placements').pluck().get()).toBe(2);
  });

  it('50 to 60 lets every leg keep its station', () => {
    const db = filledAt40();
    migrateTo(db, 60);
    expect(listTours(db)).toEqual([oldTour]);
  });

  it('60 to 70 gives old settings the usual sky', () => {
    const db = filledAt40();
    migrateTo(db, 70);
    expect(readSettings(db)).toEqual(oldSettings);
  });

  it('by step or at once, the tables are alike', () => {
    const sql = "SELECT name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite%' ORDER BY name";
    const byStep = filledAt40();
    migrate(byStep, migrations);
    const atOnce = migratedTo(newestVersion(migrations));
    expect(byStep.prepare(sql).all()).toEqual(atOnce.prepare(sql).all());
  });
});
