import { closeSync, fsyncSync, mkdirSync, openSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import { backupsIn, isBackupName, isBackupOf, nameBackup, namesIn } from './backup-names.ts';
import { connectToRead, type ReadDb, type WriteDb } from './connection.ts';
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
  const copy = copyAmongBackups(write, file, at);
  prune(file);
  return copy;
}

/** The same, but where the newest backup is the same to the byte: a start that fails and is tried again pushes none out. */
export function backUpOnce(write: WriteDb, file: string, at = new Date()): string {
  const [former] = ownBackups(file).map((name) => join(backupFolder(file), name));
  const copy = copyAmongBackups(write, file, at);
  if (former !== undefined && former !== copy && readFileSync(former).equals(readFileSync(copy))) {
    rmSync(copy);
    return former;
  }
  prune(file);
  return copy;
}

function copyAmongBackups(write: WriteDb, file: string, at: Date): string {
  const folder = backupFolder(file);
  mkdirSync(folder, { recursive: true });
  sweepHalfMade(file);
  const copy = join(folder, nameBackup(file, schemaVersion(write), at));
  copyProven(write, copy);
  return copy;
}

/** Names, the newest first. */
function ownBackups(file: string): readonly string[] {
  return backupsIn(backupFolder(file))
    .map(({ name }) => name)
    .filter((name) => isBackupOf(file, name));
}

/** Writes the catalogue to a new file that appears whole or not at all. */
export function copyProven(from: ReadDb, to: string): void {
  const unproven = `${to}.part`;
  try {
    // SQLite says of a folder that may not be written only that it can't open; the file system says why.
    closeSync(openSync(unproven, 'w'));
    from.prepare('VACUUM INTO ?').run(unproven);
    flush(unproven);
    prove(unproven, from);
    renameSync(unproven, to);
  } finally {
    rmSync(unproven, { force: true });
  }
}

/** Removes copies of this catalogue and of those used before it, beside it and among its backups, that a kill or a power cut left half-made. */
export function sweepHalfMade(file: string): void {
  const isOurs = (name: string): boolean => isBackupName(name) || isNumberedBeside(file, name);
  for (const folder of [dirname(file), backupFolder(file)])
    for (const name of namesIn(folder)) {
      const [copy, end] = name.split(/(?=\.part(?:-journal)?$)/);
      if (copy !== undefined && end !== undefined && isOurs(copy))
        rmSync(join(folder, name), { force: true });
    }
}

/** Whether a name is one that a new catalogue beside this one would get: others' files may end in `.part` too. */
function isNumberedBeside(file: string, name: string): boolean {
  const extension = extname(file);
  const stem = basename(file, extension).replace(/-\d+$/, '');
  return name.startsWith(`${stem}-`) && /^\d+$/.test(basename(name, extension).slice(stem.length + 1));
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

function prove(file: string, original: ReadDb): void {
  const copy = connectToRead(file);
  try {
    const equal = schemaVersion(copy) === schemaVersion(original) && rowCounts(copy) === rowCounts(original);
    if (!isSound(copy) || !equal) throw new Error(`The copy ${file} does not equal the catalogue.`);
  } finally {
    copy.close();
  }
}

/** How many rows each table has, as one text. */
function rowCounts(db: ReadDb): string {
  const tables = db
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY name")
    .pluck()
    .all() as string[];
  return tables
    .map((table) => `${table} ${String(db.prepare(`SELECT count(*) FROM "${table}"`).pluck().get())}`)
    .join('\n');
}

export function hasBackup(file: string): boolean {
  return ownBackups(file).length > 0;
}

/** Whether a backup was made on the day of `at`, in UTC. */
export function hasBackupOfDay(file: string, at: Date): boolean {
  const day = at.toISOString().slice(0, 'YYYY-MM-DD'.length);
  return backupsIn(backupFolder(file)).some(
    ({ name, madeAt }) => isBackupOf(file, name) && madeAt.startsWith(day),
  );
}

function prune(file: string): void {
  for (const name of ownBackups(file).slice(backupsKept)) rmSync(join(backupFolder(file), name));
}
