import { describe, expect, it } from 'vitest';
import type { WriteDb } from '../../../src-main/catalogue/connection.ts';
import { listItems } from '../../../src-main/catalogue/items.ts';
import { migrate, newestVersion, schemaVersion } from '../../../src-main/catalogue/migrate.ts';
import { migrations } from '../../../src-main/catalogue/migrations.ts';
import { listScenarios, removeScenario } from '../../../src-main/catalogue/scenarios.ts';
import { readSettings } from '../../../src-main/catalogue/settings.ts';
import { listTours } from '../../../src-main/catalogue/tours.ts';
import {
  columnsOf,
  filledAt40,
  filledAt70,
  migratedTo,
  migrateTo,
  oldScenarios,
  oldSettings,
  rowsOf,
  storeOldScenarios,
} from './older-catalogue.ts';
import { oldItems, storeOldItems } from './older-items.ts';
import { oldTour, storeOldTour } from './older-tour.ts';

function tablesOf(db: WriteDb): unknown[] {
  return db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").pluck().all();
}

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
    expect(schemaVersion(db)).toBe(100);
    expect(tablesOf(db)).toContain('criterion_scales');
  });

  it('does nothing to a catalogue of the newest version', () => {
    const db = migratedTo(newestVersion(migrations));
    const before = tablesOf(db);
    migrate(db, migrations);
    expect([schemaVersion(db), tablesOf(db)]).toEqual([100, before]);
  });

  it('makes strict tables only', () => {
    const db = migratedTo(newestVersion(migrations));
    const loose = db.prepare(
      "SELECT name FROM pragma_table_list WHERE strict = 0 AND name NOT LIKE 'sqlite%'",
    );
    expect(loose.all()).toEqual([]);
  });
});

const itemTables = ['items', 'banks', 'generator_hubs', 'hub_curve_points', 'ports'];

describe('step', () => {
  it('10 to 20 keeps the items that were stored', () => {
    const db = migratedTo(10);
    storeOldItems(db);
    const before = itemTables.map((table) => rowsOf(db, table));
    migrateTo(db, 20);
    expect(itemTables.map((table) => rowsOf(db, table))).toEqual(before);
    expect(before.map((rows) => rows.length)).toEqual([8, 1, 2, 2, 6]);
  });

  it('20 to 30 keeps items and tours', () => {
    const db = migratedTo(20);
    storeOldItems(db);
    storeOldTour(db);
    const before = rowsOf(db, 'legs');
    migrateTo(db, 30);
    expect(rowsOf(db, 'items')).toHaveLength(oldItems.length);
    expect([rowsOf(db, 'legs'), before.length]).toEqual([before, 2]);
  });

  it('30 to 40 keeps items and scenarios', () => {
    const db = migratedTo(30);
    storeOldItems(db);
    storeOldScenarios(db);
    const before = rowsOf(db, 'scenarios');
    migrateTo(db, 40);
    expect(rowsOf(db, 'items')).toHaveLength(oldItems.length);
    expect([rowsOf(db, 'scenarios'), before.length]).toEqual([before, 3]);
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
    const before = rowsOf(db, 'legs');
    migrateTo(db, 60);
    expect([rowsOf(db, 'legs'), rowsOf(db, 'leg_radiation')]).toEqual([before, []]);
  });

  it('60 to 70 gives old settings the usual sky', () => {
    const db = filledAt40();
    migrateTo(db, 70);
    expect(readSettings(db)).toEqual(oldSettings);
  });

  it('70 to 80 keeps every item, its curve and its price', () => {
    const db = filledAt70();
    migrateTo(db, 80);
    expect(listItems(db)).toEqual(oldItems);
  });

  it('70 to 80 lets curve points go with their hub', () => {
    const db = filledAt70();
    migrateTo(db, 80);
    expect(rowsOf(db, 'hub_curve_points')).toHaveLength(2);
    db.exec("DELETE FROM items WHERE id = 'old-curve-hub'");
    expect(rowsOf(db, 'hub_curve_points')).toEqual([]);
  });

  it('80 to 90 gives old tours the usual bicycle in calm air', () => {
    const db = filledAt70();
    migrateTo(db, 90);
    expect(rowsOf(db, 'tours')).toMatchObject([
      { drag_area_m2: 0.559, paved_rolling: 0.0077, drivetrain_efficiency: 0.976, downhill_cap_kmh: 45 },
    ]);
    expect(rowsOf(db, 'legs')).toMatchObject([
      { wind: 'calm', wind_kmh: null },
      { wind: 'calm', wind_kmh: null },
    ]);
  });

  it('90 to 100 turns the grades of a track into one piece', () => {
    const db = filledAt70();
    migrateTo(db, 100);
    expect(listTours(db)).toEqual([oldTour]);
    expect(tablesOf(db)).not.toContain('leg_grades');
  });

  it('90 to 100 lets tracks and pieces go with their leg', () => {
    const db = filledAt70();
    migrateTo(db, 100);
    const tables = ['leg_tracks', 'leg_track_pieces'];
    expect(tables.map((table) => rowsOf(db, table).length)).toEqual([1, 1]);
    db.exec('DELETE FROM legs WHERE position = 1');
    expect(tables.map((table) => rowsOf(db, table))).toEqual([[], []]);
  });

  it('90 to 100 leaves a leg without a track without one', () => {
    const db = filledAt70();
    db.exec('DELETE FROM leg_grades; DELETE FROM leg_tracks');
    migrateTo(db, 100);
    expect(listTours(db)[0]?.legs[1]?.terrain).toEqual({ as: 'class', terrainClass: 'mountain' });
  });

  it('by step or at once, the tables are alike', () => {
    const sql = "SELECT name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite%' ORDER BY name";
    const byStep = filledAt40();
    migrate(byStep, migrations);
    const atOnce = migratedTo(newestVersion(migrations));
    expect(byStep.prepare(sql).all()).toEqual(atOnce.prepare(sql).all());
  });
});
