import Database from 'better-sqlite3';
import { copyFileSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';

/** Looks into a copy of a catalogue, into which its WAL is played back, so that nothing changes in the file itself. */
export function inCopy<T>(file: string, look: (db: Database.Database) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'chargewright-sound-'));
  try {
    for (const end of ['', '-wal', '-journal'])
      if (existsSync(`${file}${end}`)) copyFileSync(`${file}${end}`, join(folder, `copy${end}`));
    const db = new Database(join(folder, 'copy'));
    try {
      return look(db);
    } finally {
      db.close();
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What is wrong with a catalogue's file by SQLite's own checks. */
export function unsoundParts(file: string): readonly string[] {
  return inCopy(file, checked).map((fault) => `${basename(file)}: ${fault}`);
}

function checked(db: Database.Database): readonly string[] {
  try {
    const integrity = db.prepare('PRAGMA integrity_check').pluck().all() as string[];
    const broken = db.pragma('foreign_key_check') as unknown[];
    return [
      ...integrity.filter((line) => line !== 'ok'),
      ...broken.map((reference) => `broken reference ${JSON.stringify(reference)}`),
    ];
  } catch (thrown) {
    return [String(thrown)];
  }
}

/** What is wrong with the backups of a data folder. */
export function unsoundBackups(dataFolder: string): readonly string[] {
  return backupNames(dataFolder).flatMap((name) => unsoundParts(join(dataFolder, 'backups', name)));
}

/** The files in the backup folder that bear the name of a backup, the oldest first. */
export function backupNames(dataFolder: string): readonly string[] {
  const folder = join(dataFolder, 'backups');
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith('.sqlite3'))
    .sort();
}

/** Files that were begun and never finished, anywhere in a data folder. */
export function halfMadeFiles(dataFolder: string): readonly string[] {
  return (readdirSync(dataFolder, { recursive: true }) as string[]).filter((name) => name.includes('.part'));
}
