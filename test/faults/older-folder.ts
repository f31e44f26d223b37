import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { usualCatalogue } from '../../src-main/catalogue/in-use.ts';
import { filledAt40, migrateTo } from '../src-main/catalogue/older-catalogue.ts';

/** So many that bringing them up takes tens of milliseconds, which a kill can hit. */
const moreItems = 3000;

/** Lays a catalogue of an older step into a data folder, with all that one could hold then and many things more. */
export function layOlder(dataFolder: string, step: number): string {
  mkdirSync(dataFolder, { recursive: true });
  const file = join(dataFolder, usualCatalogue);
  const db = filledAt40(file);
  db.exec(`
    WITH RECURSIVE numbers(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM numbers WHERE n < ${moreItems})
    INSERT INTO items
      SELECT 'more-' || n, 'accessory', 'More ' || n, 'owned', 1, n % 2000, n, 'EUR', 'rear-rack', 'Kept.' FROM numbers`);
  migrateTo(db, step);
  db.close();
  return file;
}
