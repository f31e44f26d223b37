import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import type { Settings } from '../../shared-types/settings.ts';
import { inTransaction, type ReadDb, type WriteDb } from './connection.ts';
import { limitColumns, type LimitColumns } from './limit-columns.ts';
import { frontLoadOf, loadColumns, type LoadColumns } from './load-columns.ts';
import { moneyColumns, moneyOf, type MoneyColumns } from './money-columns.ts';
import { readPreferences, saveScales } from './preference-rows.ts';
import { riskColumns, riskOf, type RiskColumns } from './risk-columns.ts';
import { skyColumns, skyOf, type SkyColumns } from './sky-columns.ts';
import { putRow, selectOne } from './statements.ts';

interface SettingsRow extends SkyColumns, RiskColumns, MoneyColumns, LoadColumns, LimitColumns {
  readonly currency: string;
  readonly theme: Settings['theme'];
  readonly units: Settings['units'];
  readonly number_format: Settings['numberFormat'];
  readonly letter_keys: 0 | 1;
  readonly paper: Settings['paper'];
  readonly tour_id: string | null;
  readonly step_min: number;
}

/** The settings, or null before the first start has stored any. */
export function readSettings(read: ReadDb): Settings | null {
  const row = selectOne(read, 'SELECT * FROM settings') as SettingsRow | undefined;
  if (row === undefined) return null;
  return {
    currency: row.currency,
    theme: row.theme,
    units: row.units,
    numberFormat: row.number_format,
    letterKeys: row.letter_keys === 1,
    paper: row.paper,
    tourId: row.tour_id,
    stepMinutes: String(row.step_min) as Settings['stepMinutes'],
    sky: skyOf(row),
    risk: riskOf(row),
    money: moneyOf(row),
    frontLoad: frontLoadOf(row),
    preferences: readPreferences(read, row),
  };
}

/** Fails when the settings name a tour that is not there. */
export function saveSettings(write: WriteDb, settings: Settings): Outcome<Settings> {
  return inTransaction(write, () => {
    if (settings.tourId !== null && !hasTour(write, settings.tourId)) return missingTour(settings.tourId);
    putRow(write, 'settings', 'id', {
      id: 1,
      currency: settings.currency,
      theme: settings.theme,
      units: settings.units,
      number_format: settings.numberFormat,
      letter_keys: Number(settings.letterKeys),
      paper: settings.paper,
      tour_id: settings.tourId,
      step_min: Number(settings.stepMinutes),
      ...skyColumns(settings.sky),
      ...riskColumns(settings.risk),
      ...moneyColumns(settings.money),
      ...loadColumns(settings.frontLoad),
      ...limitColumns(settings.preferences.limits),
    });
    saveScales(write, settings.preferences);
    return success(settings);
  });
}

function hasTour(read: ReadDb, id: string): boolean {
  return selectOne(read, 'SELECT 1 FROM tours WHERE id = ?', id) !== undefined;
}

function missingTour(id: string): Outcome<never> {
  const got = JSON.stringify(id);
  return failure('not-found', `The tour ${got} is not in the catalogue (any more).`, [
    { path: 'settings.tourId', allowed: 'a tour in the catalogue, or none', got },
  ]);
}
