import { existsSync, readdirSync, statSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import type { CatalogueBackup, CatalogueBeside } from '../../shared-types/catalogue-file.ts';
import { backupFolder, copyProven } from './backup.ts';
import { backupsIn } from './backup-names.ts';
import { connectToRead } from './connection.ts';
import { judgeCatalogueFile } from './judge-file.ts';

/** A name beside the catalogue that nothing has yet: `catalogue-2.sqlite3`, and so on. */
export function freeBeside(file: string): string {
  const extension = extname(file);
  const stem = basename(file, extension).replace(/-\d+$/, '');
  for (let number = 2; ; number += 1) {
    const path = join(dirname(file), `${stem}-${number}${extension}`);
    if (['', '-wal', '-shm', '-journal'].every((end) => !existsSync(`${path}${end}`))) return path;
  }
}

/** Copies a backup to a place that is free. */
export function copyBackup(backup: string, to: string): void {
  const from = connectToRead(backup);
  try {
    copyProven(from, to);
  } finally {
    from.close();
  }
}

/** The backups of a catalogue, the newest first. */
export function listBackups(file: string): readonly CatalogueBackup[] {
  const folder = backupFolder(file);
  return backupsIn(folder).map(({ name, madeAt }) => backupOf(join(folder, name), madeAt));
}

export function backupOf(path: string, madeAt: string): CatalogueBackup {
  const bytes = statSync(path, { throwIfNoEntry: false })?.size ?? 0;
  // SQLite takes an empty file for a database without tables, but no backup is one.
  const fitness = bytes === 0 ? ({ unfit: 'It is empty.', holds: null } as const) : judgeCatalogueFile(path);
  return { name: basename(path), madeAt, bytes, ...fitness };
}

/**
 * The other catalogues in these folders, the one changed last first.
 *
 * @param inUse null where nobody knows which one is
 */
export function listBeside(folders: readonly string[], inUse: string | null): readonly CatalogueBeside[] {
  return [...new Set(folders)]
    .flatMap(catalogueFilesIn)
    .filter((path) => path !== inUse)
    .map(besideOf)
    .sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1));
}

function catalogueFilesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isFile() && extname(entry.name) === '.sqlite3')
      .map(({ name }) => join(folder, name));
  } catch {
    return [];
  }
}

function besideOf(path: string): CatalogueBeside {
  const { size, mtime } = statSync(path);
  return { path, changedAt: mtime.toISOString(), bytes: size, ...judgeCatalogueFile(path) };
}
