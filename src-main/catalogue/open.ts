import { accessSync, constants, existsSync, lstatSync, mkdirSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { backUp, backUpOnce, hasBackup, hasBackupOfDay, sweepHalfMade } from './backup.ts';
import {
  connectToRead,
  connectToWrite,
  inMemory,
  setUpConnection,
  type ReadDb,
  type WriteDb,
} from './connection.ts';
import { migrate, newestVersion, refuseUnfit, schemaVersion } from './migrate.ts';
import { migrations } from './migrations.ts';
import { asStorageError, NotBroughtUpError, storageError } from './storage-error.ts';

export interface OpenedCatalogue {
  readonly read: ReadDb;
  readonly write: WriteDb;
  /** Why the backup of the day could not be made; null where it was, or none was due. */
  readonly backupFault: string | null;
  close(): void;
}

export interface OpenOptions {
  /** Whether a missing file is a fault rather than a new catalogue. */
  readonly mustExist?: boolean;
  /** Of the rider's clock: the first start of a day makes a backup. */
  readonly now?: Date;
}

/**
 * Opens the catalogue in `file`, or makes it there, folder and all; `:memory:` makes one that is gone when closed.
 * Throws a `StorageError` when it cannot, and then leaves the file as it was.
 */
export function openCatalogue(
  file: string,
  { mustExist = false, now = new Date() }: OpenOptions = {},
): OpenedCatalogue {
  const isNew = file !== inMemory && standsNothingAt(file);
  try {
    if (existsSync(file)) judge(file);
    else if (mustExist) throw storageError('missing', file);
    else if (file !== inMemory) mkdirSync(dirname(file), { recursive: true });
    const { write, backupFault } = prepared(file, now);
    const read = readerBeside(write, file);
    return { read, write, backupFault, close: () => closeAll(read, write) };
  } catch (thrown) {
    if (isNew) removeMade(file);
    throw asStorageError(thrown, file) ?? thrown;
  }
}

function readerBeside(write: WriteDb, file: string): ReadDb {
  // A database in memory belongs to its one connection.
  if (file === inMemory) return write;
  try {
    return connectToRead(file);
  } catch (thrown) {
    write.close();
    throw thrown;
  }
}

/** What can be told before anything writes to the file, which its WAL would be put into once the last writer closes. */
function judge(file: string): void {
  accessSync(file, constants.W_OK);
  // Only its backups tell a catalogue that was emptied from a first start that came to nothing.
  if (statSync(file).size === 0 && hasBackup(file)) throw storageError('damaged', file);
  if (!existsSync(`${file}-wal`)) return;
  const look = connectToRead(file);
  try {
    refuseUnfit(look, file, migrations);
  } finally {
    look.close();
  }
}

/** A link that leads nowhere is something too, and a place that can't be looked at may have something. */
function standsNothingAt(file: string): boolean {
  try {
    return lstatSync(file, { throwIfNoEntry: false }) === undefined;
  } catch {
    return false;
  }
}

/** Removes a catalogue that was only just made and can't be used, whole or begun. */
export function removeMade(file: string): void {
  for (const end of ['', '-wal', '-shm', '-journal']) rmSync(`${file}${end}`, { force: true });
}

function prepared(file: string, now: Date): Pick<OpenedCatalogue, 'write' | 'backupFault'> {
  const write = connectToWrite(file);
  try {
    refuseUnfit(write, file, migrations);
    const version = schemaVersion(write);
    const isNew = file === inMemory || version === 0;
    const isOlder = version < newestVersion(migrations);
    if (isOlder && !isNew) backUpOnce(write, file, now);
    setUpConnection(write);
    if (isOlder) bringUp(write, file, version);
    sweepHalfMade(file);
    return { write, backupFault: isNew || isOlder ? null : backUpDaily(write, file, now) };
  } catch (thrown) {
    write.close();
    throw thrown;
  }
}

function bringUp(write: WriteDb, file: string, version: number): void {
  try {
    migrate(write, migrations);
  } catch (thrown) {
    if (asStorageError(thrown) !== null) throw thrown;
    throw new NotBroughtUpError(file, version, newestVersion(migrations), thrown);
  }
}

/** A catalogue that can't be copied can still be worked with: what is wrong is answered, for the rider to hear. */
function backUpDaily(write: WriteDb, file: string, now: Date): string | null {
  try {
    if (!hasBackupOfDay(file, now)) backUp(write, file, now);
    return null;
  } catch (thrown) {
    const known = asStorageError(thrown, file);
    // That sentence speaks of the catalogue, which can be reached: it is the folder of its backups that can't.
    const told = known === null || known.fault === 'unreachable' ? thrown : known;
    return told instanceof Error ? told.message : String(told);
  }
}

/** The writer last: the last connection to close tidies the WAL away. */
function closeAll(read: ReadDb, write: WriteDb): void {
  read.close();
  write.close();
}
