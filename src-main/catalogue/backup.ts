import { closeSync, fsyncSync, mkdirSync, openSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import { connectToRead, type WriteDb } from './connection.ts';
import { isSound, schemaVersion } from './migrate.ts';

/** Enough to go back over several versions; a catalogue is well below a megabyte (common practice). */
export const backupsKept = 10;

export function backupFolder(file: string): string {
  return join(dirname(file), 'backups');
}

/**
 * Copies the catalogue into the folder beside it, proves the copy, and only then gives it its name, so that a file of
 * that name is always whole. Removes the oldest copies beyond the last ten. Returns the path of the copy.
 */
export function backUp(write: WriteDb, file: string, at = new Date()): string {
  const folder = backupFolder(file);
  mkdirSync(folder, { recursive: true });
  const copy = join(folder, backupName(file, schemaVersion(write), at));
  const unproven = `${copy}.part`;
  try {
    write.prepare('VACUUM INTO ?').run(unproven);
    flush(unproven);
    prove(unproven, schemaVersion(write));
    renameSync(unproven, copy);
  } finally {
    rmSync(unproven, { force: true });
  }
  prune(file);
  return copy;
}

/** The time stands first, so that the order of names is the order of time. */
function backupName(file: string, version: number, at: Date): string {
  const time = at.toISOString().replace(/[-:.]/g, '');
  const extension = extname(file);
  return `${basename(file, extension)}-${time}-step-${version}${extension}`;
}

/** SQLite does not flush what VACUUM INTO writes. */
function flush(file: string): void {
  const handle = openSync(file, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

function prove(file: string, version: number): void {
  const copy = connectToRead(file);
  try {
    if (!isSound(copy) || schemaVersion(copy) !== version)
      throw new Error(`The backup ${file} does not equal the catalogue.`);
  } finally {
    copy.close();
  }
}

function prune(file: string): void {
  const extension = extname(file);
  const start = `${basename(file, extension)}-`;
  const copies = readdirSync(backupFolder(file))
    .filter((name) => name.startsWith(start) && /-step-\d+$/.test(basename(name, extension)))
    .sort();
  for (const name of copies.slice(0, -backupsKept)) rmSync(join(backupFolder(file), name));
}
