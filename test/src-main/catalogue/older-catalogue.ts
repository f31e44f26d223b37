import { onTestFinished } from 'vitest';
import { usualFrontLoad } from '../../../shared-types/front-load.ts';
import { noLimits } from '../../../shared-types/limits.ts';
import { usualMoney } from '../../../shared-types/money-settings.ts';
import { usualPlacement, usualRules, type Placement, type Scenario } from '../../../shared-types/scenario.ts';
import { usualExtras, usualRisk, usualSky, type Settings } from '../../../shared-types/settings.ts';
import {
  connectToWrite,
  inMemory,
  type ReadDb,
  type WriteDb,
} from '../../../src-main/catalogue/connection.ts';
import { migrate } from '../../../src-main/catalogue/migrate.ts';
import { migrations } from '../../../src-main/catalogue/migrations.ts';
import { storeOldItems } from './older-items.ts';
import { storeOldTour } from './older-tour.ts';

/*
 * Catalogues as earlier versions left them. Their rows are written in raw SQL, as today's code knows only today's tables, and
 * beside the rows stands what today's code must read out of them.
 */

/** Brings a catalogue to an earlier version, and no further. */
export function migrateTo(db: WriteDb, version: number): void {
  migrate(
    db,
    migrations.filter((step) => step.version <= version),
  );
}

/** A new catalogue of an earlier version, closed when the test ends. */
export function migratedTo(version: number, file = inMemory): WriteDb {
  const db = connectToWrite(file);
  onTestFinished(() => void db.close());
  migrateTo(db, version);
  return db;
}

type OldPlacement = Pick<Placement, 'whileRiding' | 'atStops' | 'inCamp' | 'rackFactor'>;

/** Every value that the placement of an older scenario could have. */
const oldPlacements: Readonly<Record<string, OldPlacement>> = {
  'old-a': { whileRiding: 'flat', atStops: 'aimed', inCamp: 'flat', rackFactor: 0.4 },
  'old-b': { whileRiding: 'packed', atStops: 'flat', inCamp: 'packed', rackFactor: 0 },
  'old-c': { whileRiding: 'flat', atStops: 'packed', inCamp: 'aimed', rackFactor: 1 },
};

/** From version 30 up to 40: a scenario for each placement, the first of them with a kit. */
export function storeOldScenarios(db: WriteDb): void {
  const insert = db.prepare(
    "INSERT INTO scenarios VALUES (?, ?, 'panel', ?, ?, ?, ?, 'banks-first', 'device-too', 'Kept.')",
  );
  for (const [id, { whileRiding, atStops, inCamp, rackFactor }] of Object.entries(oldPlacements))
    insert.run(id, `Scenario ${id}`, whileRiding, atStops, inCamp, rackFactor);
  db.exec("INSERT INTO scenario_kit VALUES ('old-a', 0, 'old-panel', 1), ('old-a', 1, 'old-bank', 2)");
}

const kitOfFirst = [
  { itemId: 'old-panel', quantity: 1 },
  { itemId: 'old-bank', quantity: 2 },
];

/** The scenarios of `storeOldScenarios()` as they must be read today: what they did not say is as usual. */
export const oldScenarios: readonly Scenario[] = Object.entries(oldPlacements).map(([id, placement]) => ({
  id,
  label: `Scenario ${id}`,
  method: 'panel',
  kit: id === 'old-a' ? kitOfFirst : [],
  placement: { ...usualPlacement, ...placement },
  rules: { ...usualRules, atWall: 'banks-first', unsteadySource: 'device-too' },
  notes: 'Kept.',
}));

const oldScales = {
  cost: { weight: 0.25, satisfied: 10, unacceptable: 300 },
  grams: { weight: 0.25, satisfied: 400, unacceptable: 1200 },
  frontWheelGrams: { weight: 0, satisfied: 0, unacceptable: 500 },
  margin: { weight: 0.5, satisfied: 0.4, unacceptable: 0 },
} as const;

/** The settings of `storeOldSettings()` as they must be read today. */
export const oldSettings: Settings = {
  currency: 'CHF',
  theme: 'dark',
  units: 'metric',
  numberFormat: 'system',
  letterKeys: true,
  paper: 'a4',
  tourId: 'old-tour',
  stepMinutes: '30',
  sky: usualSky,
  risk: usualRisk,
  money: usualMoney('CHF'),
  frontLoad: usualFrontLoad,
  preferences: { ...oldScales, ...usualExtras, limits: noLimits },
};

/** At version 40: settings in another currency than the demo's, with the old tour chosen. */
function storeOldSettings(db: WriteDb): void {
  db.exec("INSERT INTO settings VALUES (1, 'CHF', 'dark', 'old-tour', 30)");
  const insert = db.prepare('INSERT INTO criterion_scales VALUES (?, ?, ?, ?)');
  for (const [criterion, { weight, satisfied, unacceptable }] of Object.entries(oldScales))
    insert.run(criterion, weight, satisfied, unacceptable);
}

/** A catalogue of the last version before the sun had tables of its own, with rows in every table. */
export function filledAt40(file = inMemory): WriteDb {
  const db = migratedTo(40, file);
  storeOldItems(db);
  storeOldTour(db);
  storeOldScenarios(db);
  storeOldSettings(db);
  return db;
}

/** A catalogue of the last version before hub wheels, bicycles, wind and track pieces, with all that one could hold then. */
export function filledAt70(file = inMemory): WriteDb {
  const db = filledAt40(file);
  migrateTo(db, 70);
  return db;
}

/** A catalogue of the last version before cables, lists of nights, the later rules and risk. */
export function filledAt100(file = inMemory): WriteDb {
  const db = filledAt70(file);
  migrateTo(db, 100);
  return db;
}

/** Every row of a table, whatever its columns are in this version. */
export function rowsOf(db: ReadDb, table: string): unknown[] {
  return db.prepare(`SELECT * FROM ${table}`).all();
}

/** The names of the columns of a table, in their order. */
export function columnsOf(db: WriteDb, table: string): unknown[] {
  return db.prepare('SELECT name FROM pragma_table_info(?)').pluck().all(table);
}
