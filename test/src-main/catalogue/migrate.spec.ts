import { describe, expect, it } from 'vitest';
import type { WriteDb } from '../../../src-main/catalogue/connection.ts';
import { readGeneratorHub } from '../../../src-main/catalogue/item-kinds/generator-hub.ts';
import { readTrack } from '../../../src-main/catalogue/leg-tracks.ts';
import { migrate, newestVersion, schemaVersion } from '../../../src-main/catalogue/migrate.ts';
import { migrations } from '../../../src-main/catalogue/migrations.ts';
import type { LimitColumns } from '../../../src-main/catalogue/limit-columns.ts';
import { readPlacement } from '../../../src-main/catalogue/placements.ts';
import { readPreferences } from '../../../src-main/catalogue/preference-rows.ts';
import { usualFrontLoad } from '../../../shared-types/front-load.ts';
import { usualMoney } from '../../../shared-types/money-settings.ts';
import { usualSky } from '../../../shared-types/settings.ts';
import { loadColumns } from '../../../src-main/catalogue/load-columns.ts';
import { moneyColumns } from '../../../src-main/catalogue/money-columns.ts';
import { skyOf, type SkyColumns } from '../../../src-main/catalogue/sky-columns.ts';
import {
  columnsOf,
  filledAt100,
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
    expect(schemaVersion(db)).toBe(230);
    expect(tablesOf(db)).toContain('criterion_scales');
  });

  it('does nothing to a catalogue of the newest version', () => {
    const db = migratedTo(newestVersion(migrations));
    const before = tablesOf(db);
    migrate(db, migrations);
    expect([schemaVersion(db), tablesOf(db)]).toEqual([230, before]);
  });

  it('makes strict tables only', () => {
    const db = migratedTo(newestVersion(migrations));
    const loose = db.prepare(
      "SELECT name FROM pragma_table_list WHERE strict = 0 AND name NOT LIKE 'sqlite%'",
    );
    expect(loose.all()).toEqual([]);
  });
});

/** What the step to 80 had no business with. */
const untouchedAt80 = ['items', 'devices', 'banks', 'panels', 'wall_chargers', 'ports', 'hub_curve_points'];

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
    const kits = rowsOf(db, 'scenario_kit');
    migrateTo(db, 50);
    expect(oldScenarios.map(({ id }) => readPlacement(db, id))).toEqual(
      oldScenarios.map(({ placement }) => placement),
    );
    expect([rowsOf(db, 'scenario_kit'), kits.length]).toEqual([kits, 2]);
  });

  it('40 to 50 leaves no placement in the scenarios', () => {
    const db = filledAt40();
    migrateTo(db, 50);
    const columns = ['id', 'label', 'method', 'at_wall', 'unsteady_source', 'notes'];
    expect(columnsOf(db, 'scenarios')).toEqual(columns);
    db.exec("DELETE FROM scenarios WHERE id = 'old-a'");
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
    expect(rowsOf(db, 'settings').map((row) => skyOf(row as SkyColumns))).toEqual([usualSky]);
  });

  it('70 to 80 keeps every item, its curve and its price', () => {
    const db = filledAt70();
    const before = untouchedAt80.map((table) => rowsOf(db, table));
    migrateTo(db, 80);
    expect(untouchedAt80.map((table) => rowsOf(db, table))).toEqual(before);
    expect(rowsOf(db, 'converters')).toMatchObject([{ hub_load: 'rated', series_capacitor_uf: 0 }]);
    expect(rowsOf(db, 'accessories')).toMatchObject([{ item_id: 'old-cable', for_hub: 0 }]);
    // Today's code reads today's tables.
    migrate(db, migrations);
    const hubs = oldItems.filter(({ kind }) => kind === 'generator-hub');
    expect(hubs).toMatchObject(hubs.map(({ id }) => readGeneratorHub(db, id)));
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
    const { terrain } = oldTour.legs[1]!;
    expect(terrain).toMatchObject({ ...readTrack(db, 'old-tour', 1) });
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
    expect(readTrack(db, 'old-tour', 1)).toBeNull();
    expect(rowsOf(db, 'legs')).toMatchObject([{}, { terrain_class: 'mountain' }]);
  });

  it('100 to 110 gives every sink the cable that passes all it takes', () => {
    const db = filledAt100();
    db.exec(`INSERT INTO ports VALUES
      ('old-cable', 'in', 0, 'usb-2', 2.5), ('old-cable', 'in', 1, 'usb-3', 4.5),
      ('old-cable', 'in', 2, 'bc-1.2', 7.5), ('old-cable', 'in', 3, 'type-c-1.5a', 7.5),
      ('old-cable', 'in', 4, 'type-c-3a', 100), ('old-cable', 'in', 5, 'pd', 60),
      ('old-cable', 'in', 6, 'pd', 60.5), ('old-cable', 'in', 7, 'pd', 240),
      ('old-cable', 'out', 0, 'pd', 240)`);
    migrateTo(db, 110);
    const cables = db.prepare(
      "SELECT cable FROM ports WHERE item_id = 'old-cable' ORDER BY direction, position",
    );
    expect(cables.pluck().all()).toEqual([
      'a-plug',
      'a-plug',
      'a-plug',
      'c-3a',
      'c-3a',
      'c-3a',
      'c-5a',
      'c-5a',
      null,
    ]);
  });

  it('100 to 110 keeps every port, which goes with its item', () => {
    const db = filledAt100();
    const before = rowsOf(db, 'ports') as object[];
    migrateTo(db, 110);
    expect([rowsOf(db, 'ports'), before.length]).toMatchObject([before, 6]);
    db.exec('DELETE FROM scenario_kit; DELETE FROM items');
    expect(rowsOf(db, 'ports')).toEqual([]);
  });

  it('110 to 120 lets old devices draw nothing more while plugged in', () => {
    const db = filledAt100();
    const before = rowsOf(db, 'devices') as object[];
    migrateTo(db, 120);
    expect(rowsOf(db, 'devices')).toEqual(before.map((row) => ({ ...row, plugged_w: 0 })));
  });

  it('120 to 130 keeps the two rules there were and adds the usual ones', () => {
    const db = filledAt100();
    const before = rowsOf(db, 'scenarios') as object[];
    migrateTo(db, 130);
    const usual = { at_post: 'devices-too', when_short: 'nice-to-haves-wait', cells_sleep: 'tent' };
    expect(rowsOf(db, 'scenarios')).toEqual(before.map((row) => ({ ...row, ...usual })));
  });

  it('130 to 140 keeps every night, the sixtieth too, as a pattern', () => {
    const db = filledAt100();
    db.exec("INSERT INTO leg_nights VALUES ('old-tour', 0, 59, 'electric-post')");
    const [nights, legs] = [rowsOf(db, 'leg_nights'), rowsOf(db, 'legs') as object[]];
    migrateTo(db, 140);
    expect([rowsOf(db, 'leg_nights'), nights.length]).toEqual([nights, 4]);
    expect(rowsOf(db, 'legs')).toEqual(legs.map((row) => ({ ...row, nights_by: 'pattern' })));
  });

  it('130 to 140 has room for a year of nights, which go with their leg', () => {
    const db = filledAt100();
    migrateTo(db, 140);
    const night = (position: number): string =>
      `INSERT INTO leg_nights VALUES ('old-tour', 0, ${position}, 'wall')`;
    db.exec(night(365));
    expect(() => db.exec(night(366))).toThrow(/position BETWEEN 0 AND 365/);
    db.exec('DELETE FROM legs');
    expect(rowsOf(db, 'leg_nights')).toEqual([]);
  });

  it('140 to 150 gives old settings the usual risk', () => {
    const db = filledAt100();
    const before = rowsOf(db, 'settings') as object[];
    migrateTo(db, 150);
    expect(rowsOf(db, 'settings')).toEqual(
      before.map((row) => ({ ...row, risk_confidence: 0.9, risk_use_spread: 0.25 })),
    );
  });

  it('150 to 160 gives old items the usual life of their kind and no known resale', () => {
    const db = filledAt100();
    migrateTo(db, 150);
    const before = rowsOf(db, 'items') as object[];
    migrateTo(db, 160);
    expect(rowsOf(db, 'items')).toEqual(
      before.map((row) => ({ ...row, life_years: null, resale_minor: null, resale_currency: null })),
    );
  });

  it('150 to 160 keeps an amount and its currency together', () => {
    const db = filledAt100();
    migrateTo(db, 160);
    expect(() => db.exec('UPDATE items SET resale_minor = 500')).toThrow(/resale_with_its_currency/);
    expect(() => db.exec("UPDATE items SET resale_currency = 'EUR'")).toThrow(/resale_with_its_currency/);
    db.exec("UPDATE items SET resale_minor = 500, resale_currency = 'EUR'");
  });

  it('160 to 170 gives old settings nights at no price in their currency, and the usual balance', () => {
    const db = filledAt100();
    migrateTo(db, 160);
    const before = rowsOf(db, 'settings') as { readonly currency: string }[];
    migrateTo(db, 170);
    expect(rowsOf(db, 'settings')).toEqual(
      before.map((row) => ({
        ...row,
        ...moneyColumns(usualMoney(row.currency)),
        ...loadColumns(usualFrontLoad),
      })),
    );
  });

  it('170 to 180 keeps every scale, adds the extras uncounted, and sets no limit', () => {
    const db = filledAt100();
    migrateTo(db, 170);
    const [scales, settings] = [
      rowsOf(db, 'criterion_scales') as object[],
      rowsOf(db, 'settings') as object[],
    ];
    migrateTo(db, 180);
    const core = 'SELECT * FROM criterion_scales WHERE counted IS NULL';
    expect(db.prepare(core).all()).toEqual(scales.map((row) => ({ ...row, counted: null })));
    expect(scales).toHaveLength(4);
    const limits = { limit_to_buy: null, limit_g: null, limit_front_wheel_g: null, limit_margin: null };
    expect(rowsOf(db, 'settings')).toEqual(settings.map((row) => ({ ...row, ...limits, limit_by_air: 0 })));
    expect(readPreferences(db, rowsOf(db, 'settings')[0] as LimitColumns)).toEqual(oldSettings.preferences);
  });

  it('170 to 180 adds no scale to a catalogue that has no settings yet', () => {
    const db = migratedTo(180);
    expect(rowsOf(db, 'criterion_scales')).toEqual([]);
  });

  it('210 to 220 keeps hubs, readings and what was stored from them, with nothing made up', () => {
    const db = filledAt100();
    migrateTo(db, 210);
    db.exec(`
      INSERT INTO readings (id, item_id, form, taken_on, note, counted_wh, hours)
        VALUES ('old-ride', 'old-hub', 'ride', '2026-05-03', 'Kept.', 12, 5);
      INSERT INTO kept_estimates VALUES ('old-bank', 'bank-delivery', 26, 24.5, 27.5, 4, '2026-05-03');
    `);
    const [hubs, readings, kept] = ['generator_hubs', 'readings', 'kept_estimates'].map(
      (table) => rowsOf(db, table) as object[],
    );
    migrateTo(db, 220);
    const unmeasured = { measured_yield: null, measured_yield_on: null };
    expect(rowsOf(db, 'generator_hubs')).toEqual(hubs!.map((row) => ({ ...row, ...unmeasured })));
    expect(rowsOf(db, 'readings')).toEqual(readings!.map((row) => ({ ...row, distance_km: null })));
    expect(rowsOf(db, 'kept_estimates')).toEqual(kept);
    db.exec("UPDATE kept_estimates SET measure = 'hub-yield'");
  });

  it('by step or at once, the tables are alike', () => {
    const sql = "SELECT name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite%' ORDER BY name";
    const byStep = filledAt40();
    migrate(byStep, migrations);
    const atOnce = migratedTo(newestVersion(migrations));
    expect(byStep.prepare(sql).all()).toEqual(atOnce.prepare(sql).all());
  });
});
