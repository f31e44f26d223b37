import { existsSync } from 'node:fs';
import type { CatalogueSize, StorageFault } from '../../shared-types/catalogue-file.ts';
import { connectToRead, type ReadDb } from './connection.ts';
import { refuseUnfit } from './migrate.ts';
import { migrations } from './migrations.ts';
import { asStorageError } from './storage-error.ts';

/** Whether a file could be the catalogue, why not, and what it holds. */
export type FileFitness =
  { readonly unfit: string; readonly holds: null } | { readonly unfit: null; readonly holds: CatalogueSize };

/** In a list, where each stands beside its file's name; other faults are told by their sentence. */
const inShort: Readonly<Partial<Record<StorageFault, string>>> = {
  damaged: 'A part of it is damaged.',
  newer: 'A newer Chargewright wrote it.',
  'not-a-catalogue': 'It is no Chargewright catalogue.',
  locked: 'Another program is writing to it.',
};

/** Looks into a file and changes nothing. */
export function judgeCatalogueFile(file: string): FileFitness {
  try {
    if (!existsSync(file)) return { unfit: 'It is not there any more.', holds: null };
    return judged(file);
  } catch (thrown) {
    const error = asStorageError(thrown, file);
    if (error === null) throw thrown;
    return { unfit: inShort[error.fault] ?? error.message, holds: null };
  }
}

function judged(file: string): FileFitness {
  const db = connectToRead(file);
  try {
    refuseUnfit(db, file, migrations);
    return { unfit: null, holds: sizeOf(db) };
  } finally {
    db.close();
  }
}

function sizeOf(db: ReadDb): CatalogueSize {
  const count = (table: string): number => (hasTable(db, table) ? countRows(db, table) : 0);
  return {
    items: count('items'),
    tours: count('tours'),
    scenarios: count('scenarios'),
    readings: count('readings'),
  };
}

/** A catalogue of an older step has fewer tables. */
function hasTable(db: ReadDb, table: string): boolean {
  const named = "SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = ?";
  return db.prepare(named).pluck().get(table) === 1;
}

function countRows(db: ReadDb, table: string): number {
  return db.prepare(`SELECT count(*) FROM ${table}`).pluck().get() as number;
}
