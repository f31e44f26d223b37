import Database from 'better-sqlite3';
import { inTransaction, type ReadDb, type WriteDb } from './connection.ts';
import type { Migration } from './migrations.ts';
import { NewerCatalogueError, storageError } from './storage-error.ts';

/** Marks an SQLite file as ours (`PRAGMA application_id`): "CGWT" in ASCII. */
const applicationId = 0x43475754;

export function schemaVersion(db: ReadDb): number {
  return db.pragma('user_version', { simple: true }) as number;
}

export function newestVersion(steps: readonly Migration[]): number {
  return Math.max(0, ...steps.map((step) => step.version));
}

/** Throws unless the file is empty or a sound catalogue of a version that these steps know. Changes nothing. */
export function refuseUnfit(db: ReadDb, file: string, steps: readonly Migration[]): void {
  const version = schemaVersion(db);
  const ours = db.pragma('application_id', { simple: true }) === applicationId;
  const tables = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() as number;
  if (!ours && (version !== 0 || tables !== 0)) throw storageError('not-a-catalogue', file);
  if (version > newestVersion(steps)) throw new NewerCatalogueError(file, version, newestVersion(steps));
  if (!isSound(db)) throw storageError('damaged', file);
}

/**
 * Whether pages, indexes and the rules of the tables hold, and every reference leads somewhere. Rules that no longer read as
 * SQL are damage too.
 */
export function isSound(db: ReadDb): boolean {
  try {
    return checksOut(db);
  } catch (thrown) {
    if (thrown instanceof Database.SqliteError && thrown.code === 'SQLITE_ERROR') return false;
    throw thrown;
  }
}

function checksOut(db: ReadDb): boolean {
  const broken = db.pragma('foreign_key_check') as unknown[];
  return db.pragma('integrity_check(1)', { simple: true }) === 'ok' && broken.length === 0;
}

/**
 * Runs the steps that the catalogue has not seen yet, all of them or none: after a fault it is still what the Chargewright
 * that wrote it opens.
 */
export function migrate(write: WriteDb, steps: readonly Migration[]): void {
  // SQLite ignores this switch inside a transaction, and a step that rebuilds a table would set off ON DELETE rules.
  write.pragma('foreign_keys = OFF');
  try {
    inTransaction(write, () => {
      // Asked inside the transaction: another start of Chargewright may have run the steps in the meantime.
      const version = schemaVersion(write);
      for (const step of steps.filter((each) => each.version > version)) runStep(write, step);
    });
  } finally {
    write.pragma('foreign_keys = ON');
  }
}

function runStep(write: WriteDb, step: Migration): void {
  write.exec(step.sql);
  const broken = write.pragma('foreign_key_check') as unknown[];
  if (broken.length > 0) throw new Error(`Step ${step.version} leaves ${broken.length} broken references`);
  write.pragma(`application_id = ${applicationId}`);
  write.pragma(`user_version = ${step.version}`);
}
