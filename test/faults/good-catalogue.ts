import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { demoItems, demoTours } from '../../db/demo/demo.ts';
import { backUp, backupFolder } from '../../src-main/catalogue/backup.ts';
import { nameBackup } from '../../src-main/catalogue/backup-names.ts';
import { loadDemoIfEmpty } from '../../src-main/catalogue/demo.ts';
import { usualCatalogue } from '../../src-main/catalogue/in-use.ts';
import { saveItem } from '../../src-main/catalogue/items.ts';
import { newestVersion } from '../../src-main/catalogue/migrate.ts';
import { migrations } from '../../src-main/catalogue/migrations.ts';
import { openCatalogue } from '../../src-main/catalogue/open.ts';
import { keepEstimate } from '../../src-main/catalogue/reading-estimates.ts';
import { saveReading } from '../../src-main/catalogue/readings.ts';
import { saveTour } from '../../src-main/catalogue/tours.ts';
import { someEstimate, someReadings } from '../src-main/catalogue/some-readings.ts';

const moreThings = 40;
const moreTours = 6;

/** The bytes of a sound catalogue and of its backup. */
export interface GoodCatalogue {
  readonly bytes: Buffer;
  readonly backup: Buffer;
  readonly things: number;
}

/** A sound catalogue with the demo and something more in every list. */
export function goodCatalogue(): GoodCatalogue {
  const folder = mkdtempSync(join(tmpdir(), 'chargewright-good-'));
  try {
    const file = join(folder, usualCatalogue);
    const backup = readFileSync(filled(file));
    return { bytes: readFileSync(file), backup, things: demoItems.length + moreThings };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Fills a new catalogue and backs it up; the path of the backup. */
function filled(file: string): string {
  const { write, ...catalogue } = openCatalogue(file);
  loadDemoIfEmpty(write);
  for (let n = 0; n < moreThings; n += 1) {
    const { id: _, ...like } = demoItems[n % demoItems.length]!;
    saveItem(write, { ...like, label: `Thing ${n}`, notes: 'Kept. '.repeat(n) });
  }
  const { id: _, ...tour } = demoTours[0]!;
  for (let n = 0; n < moreTours; n += 1) saveTour(write, { ...tour, label: `Tour ${n}` });
  for (const reading of someReadings) saveReading(write, reading);
  keepEstimate(write, someEstimate);
  const copy = backUp(write, file);
  catalogue.close();
  return copy;
}

/** Lays it into a data folder as its catalogue, and a backup of today beside it; the catalogue's path. */
export function layCatalogue(dataFolder: string, { bytes, backup }: GoodCatalogue): string {
  const file = join(dataFolder, usualCatalogue);
  const copy = join(backupFolder(file), nameBackup(file, newestVersion(migrations), new Date()));
  mkdirSync(dirname(copy), { recursive: true });
  writeFileSync(file, bytes);
  writeFileSync(copy, backup);
  return file;
}
