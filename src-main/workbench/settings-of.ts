import type { Settings } from '../../shared-types/settings.ts';
import { readSettings } from '../catalogue/settings.ts';
import type { ReadDb } from '../catalogue/connection.ts';

/** The settings row; `openWorkbench` has made sure that there is one. */
export function settingsOf(read: ReadDb): Settings {
  const settings = readSettings(read);
  if (settings === null)
    throw new Error('The catalogue holds no settings row, which opening it should have made.');
  return settings;
}
