import Database from 'better-sqlite3';
import { statSync } from 'node:fs';
import { storageError } from './storage-error.ts';

declare const reads: unique symbol;
declare const writes: unique symbol;

/** A handle that reads. For a catalogue in a file its connection cannot write at all. */
export type ReadDb = Database.Database & { readonly [reads]: true };

/** A handle that writes, and reads what it wrote. A function that takes one cannot be given a `ReadDb`. */
export type WriteDb = ReadDb & { readonly [writes]: true };

/** A catalogue that lives as long as its connection; for tests and trials. */
export const inMemory = ':memory:';

/** Long enough for another start of Chargewright to finish a save, short enough not to look hung (common practice). */
const busyTimeoutMs = 2000;

export function connectToRead(file: string): ReadDb {
  return new Database(file, { readonly: true, timeout: busyTimeoutMs }) as ReadDb;
}

export function connectToWrite(file: string): WriteDb {
  return new Database(file, { timeout: busyTimeoutMs }) as WriteDb;
}

export function sqliteVersion(): string {
  const db = connectToWrite(inMemory);
  try {
    return db.prepare('SELECT sqlite_version()').pluck().get() as string;
  } finally {
    db.close();
  }
}

/**
 * Readers and one writer at a time without blocking each other (WAL), references enforced, and every save flushed to the
 * disk: with WAL the cheaper `NORMAL` could lose the last saves in a power cut, and a rider saves rarely.
 */
export function setUpConnection(write: WriteDb): void {
  if (write.name !== inMemory) openedAs.set(write, markOf(write.name));
  write.pragma('journal_mode = WAL');
  write.pragma('synchronous = FULL');
  write.pragma('foreign_keys = ON');
}

/** Which file a connection writes to: its path may come to name another, or none. */
const openedAs = new WeakMap<WriteDb, string | null>();

function markOf(file: string): string | null {
  const found = statSync(file, { throwIfNoEntry: false, bigint: true });
  return found === undefined ? null : `${found.dev} ${found.ino}`;
}

/**
 * Throws where the file was removed, moved or replaced: the system would take the save and lose it with the file. SQLite asks
 * the same of a file's number (SQLITE_FCNTL_HAS_MOVED), but not while it writes ahead.
 */
export function refuseMoved(write: WriteDb): void {
  const mark = openedAs.get(write);
  if (mark !== undefined && markOf(write.name) !== mark) throw storageError('missing', write.name);
}

/** All or nothing. Inside another transaction it becomes a part of that one. */
export function inTransaction<T>(write: WriteDb, work: () => T): T {
  if (!write.inTransaction) refuseMoved(write);
  return write.transaction(work).immediate();
}
