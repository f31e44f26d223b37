import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { backUp } from './backup.ts';
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
import { asStorageError } from './storage-error.ts';

export interface OpenedCatalogue {
  readonly read: ReadDb;
  readonly write: WriteDb;
  close(): void;
}

/**
 * Opens the catalogue in `file`, or makes it there, folder and all; `:memory:` makes one that is gone when closed.
 * Throws a `StorageError` when it cannot, and then leaves the file as it was.
 */
export function openCatalogue(file: string): OpenedCatalogue {
  try {
    if (file !== inMemory) mkdirSync(dirname(file), { recursive: true });
    const write = prepared(file);
    // A database in memory belongs to its one connection.
    const read = file === inMemory ? write : connectToRead(file);
    return { read, write, close: () => closeAll(read, write) };
  } catch (thrown) {
    throw asStorageError(thrown, file) ?? thrown;
  }
}

function prepared(file: string): WriteDb {
  const write = connectToWrite(file);
  try {
    refuseUnfit(write, file, migrations);
    setUpConnection(write);
    const version = schemaVersion(write);
    if (file !== inMemory && version > 0 && version < newestVersion(migrations)) backUp(write, file);
    migrate(write, migrations);
    return write;
  } catch (thrown) {
    write.close();
    throw thrown;
  }
}

/** The writer last: the last connection to close tidies the WAL away. */
function closeAll(read: ReadDb, write: WriteDb): void {
  read.close();
  write.close();
}
