import { onTestFinished } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { usualPlacement, type Placement, type Scenario } from '../../../shared-types/scenario.ts';
import { usualSky, type Preferences, type Settings } from '../../../shared-types/settings.ts';
import type { Leg, Tour } from '../../../shared-types/tour.ts';
import { connectToWrite, inMemory, type WriteDb } from '../../../src-main/catalogue/connection.ts';
import { saveItem } from '../../../src-main/catalogue/items.ts';
import { migrate } from '../../../src-main/catalogue/migrate.ts';
import { migrations } from '../../../src-main/catalogue/migrations.ts';

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

/** Items have had the same tables from the first version on. */
export function storeItems(db: WriteDb): void {
  for (const { id, ...item } of demoItems) saveItem(db, item, id);
}

/** From version 20 on: a tour with every part a leg can have. */
export function storeOldTour(db: WriteDb): void {
  db.exec(`
    INSERT INTO tours VALUES ('old-tour', 'Coast and moor', '2026-06-01', 71.5, 33, 98, 'Kept.');
    INSERT INTO legs VALUES
      ('old-tour', 0, 'Coast', 4, 'Oslo', NULL, NULL, NULL, 'rolling', 5.5, 2, 1),
      ('old-tour', 1, 'Moor', 3, NULL, 62.25, 9.5, 940, 'mountain', 6, 1, 1);
    INSERT INTO leg_nights VALUES
      ('old-tour', 0, 0, 'none'), ('old-tour', 0, 1, 'wall'), ('old-tour', 1, 0, 'electric-post');
    INSERT INTO day_stops VALUES ('old-tour', 0, 0, 'Lunch stop', 60, 1, 0.5);
    INSERT INTO leg_tracks VALUES ('old-tour', 1, 'Over the moor', 180.5, 2100, 1900, 910, 62.3, 9.6);
    INSERT INTO leg_grades VALUES ('old-tour', 1, 0, -4, 0.5), ('old-tour', 1, 1, 4.5, 0.5);
    INSERT INTO tour_left_at_home VALUES ('old-tour', 0, 'demo-reader');
  `);
}

const coast: Leg = {
  label: 'Coast',
  days: 4,
  place: { as: 'station', station: 'Oslo' },
  radiation: { as: 'sunshine' },
  terrain: { as: 'class', terrainClass: 'rolling' },
  ridingHours: 5.5,
  nights: { pattern: ['none', 'wall'], wallOutlets: 2, postOutlets: 1 },
  dayStops: [{ label: 'Lunch stop', minutes: 60, outlets: 1, chance: 0.5 }],
};

const moor: Leg = {
  label: 'Moor',
  days: 3,
  place: { as: 'coordinates', latDeg: 62.25, lonDeg: 9.5, elevationM: 940 },
  radiation: { as: 'sunshine' },
  terrain: {
    as: 'track',
    terrainClass: 'mountain',
    track: {
      name: 'Over the moor',
      distanceKm: 180.5,
      ascentM: 2100,
      descentM: 1900,
      meanElevationM: 910,
      meanLatDeg: 62.3,
      meanLonDeg: 9.6,
      grades: [
        { gradePct: -4, share: 0.5 },
        { gradePct: 4.5, share: 0.5 },
      ],
    },
  },
  ridingHours: 6,
  nights: { pattern: ['electric-post'], wallOutlets: 1, postOutlets: 1 },
  dayStops: [],
};

/** The tour of `storeOldTour()` as it must be read today. */
export const oldTour: Tour = {
  id: 'old-tour',
  label: 'Coast and moor',
  startDate: '2026-06-01',
  legs: [coast, moor],
  leftAtHome: ['demo-reader'],
  riderMassKg: 71.5,
  bicycleMassKg: 33,
  riderW: 98,
  notes: 'Kept.',
};

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
  db.exec(
    "INSERT INTO scenario_kit VALUES ('old-a', 0, 'demo-panel-20', 1), ('old-a', 1, 'demo-bank-10', 2)",
  );
}

const kitOfFirst = [
  { itemId: 'demo-panel-20', quantity: 1 },
  { itemId: 'demo-bank-10', quantity: 2 },
];

/** The scenarios of `storeOldScenarios()` as they must be read today: what they did not say is as usual. */
export const oldScenarios: readonly Scenario[] = Object.entries(oldPlacements).map(([id, placement]) => ({
  id,
  label: `Scenario ${id}`,
  method: 'panel',
  kit: id === 'old-a' ? kitOfFirst : [],
  placement: { ...usualPlacement, ...placement },
  rules: { atWall: 'banks-first', unsteadySource: 'device-too' },
  notes: 'Kept.',
}));

const oldPreferences: Preferences = {
  cost: { weight: 0.25, satisfied: 10, unacceptable: 300 },
  grams: { weight: 0.25, satisfied: 400, unacceptable: 1200 },
  frontWheelGrams: { weight: 0, satisfied: 0, unacceptable: 500 },
  margin: { weight: 0.5, satisfied: 0.4, unacceptable: 0 },
};

/** The settings of `storeOldSettings()` as they must be read today. */
export const oldSettings: Settings = {
  currency: 'CHF',
  theme: 'dark',
  tourId: 'old-tour',
  stepMinutes: '30',
  sky: usualSky,
  preferences: oldPreferences,
};

/** At version 40: settings in another currency than the demo's, with the old tour chosen. */
function storeOldSettings(db: WriteDb): void {
  db.exec("INSERT INTO settings VALUES (1, 'CHF', 'dark', 'old-tour', 30)");
  const insert = db.prepare('INSERT INTO criterion_scales VALUES (?, ?, ?, ?)');
  for (const [criterion, { weight, satisfied, unacceptable }] of Object.entries(oldPreferences))
    insert.run(criterion, weight, satisfied, unacceptable);
}

/** A catalogue of the last version before the sun had tables of its own, with rows in every table. */
export function filledAt40(file = inMemory): WriteDb {
  const db = migratedTo(40, file);
  storeItems(db);
  storeOldTour(db);
  storeOldScenarios(db);
  storeOldSettings(db);
  return db;
}
