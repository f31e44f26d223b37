import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { climateCredit, climateSources } from './climate-credit.ts';

/** The file's name inside the data folder. */
export const climateNotesFile = 'climate-sources.txt';

/** The credit for the climate figures, and what the codes in a station's source stand for. */
export function climateNotes(): string {
  const codes = climateSources.map(({ code, what }) => `${code}: ${what}`);
  return [climateCredit, "The codes in a station's source:", ...codes, ''].join('\n\n').trimEnd() + '\n';
}

/**
 * Puts the credit beside the catalogue, where it goes along when the folder is copied. Does nothing where it already stands.
 * A folder that cannot be written is passed over in silence: opening the catalogue in it tells what is wrong and what to do.
 */
export function writeClimateNotes(folder: string): void {
  const file = join(folder, climateNotesFile);
  try {
    if (existsSync(file) && readFileSync(file, 'utf8') === climateNotes()) return;
    writeFileSync(file, climateNotes());
  } catch (thrown) {
    if (!(thrown instanceof Error && 'code' in thrown)) throw thrown;
  }
}
