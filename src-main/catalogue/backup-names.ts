import { readdirSync } from 'node:fs';
import { basename, extname } from 'node:path';

export interface NamedBackup {
  readonly name: string;
  /** ISO 8601, in UTC. */
  readonly madeAt: string;
}

/**
 * `catalogue-20270503T120000000Z-step-230.sqlite3`: the catalogue, when, and the step of its tables. SQLite's side files end in
 * `-wal` and the like, and are none.
 */
const shape = /^(?<of>.+)-(?<time>\d{8}T\d{9}Z)-step-\d+(?<extension>\.[^.-]+)$/;

/** The time stands before the step, so that the order of names is the order of time. */
export function nameBackup(file: string, step: number, at: Date): string {
  const time = at.toISOString().replace(/[-:.]/g, '');
  const extension = extname(file);
  return `${basename(file, extension)}-${time}-step-${step}${extension}`;
}

/** Whether a path ends as the name of a backup does. */
export function isBackupName(path: string): boolean {
  return shape.test(basename(path));
}

export function isBackupOf(file: string, name: string): boolean {
  const groups = shape.exec(name)?.groups;
  return groups !== undefined && `${groups['of']}${groups['extension']}` === basename(file);
}

/** The backups in a folder, whichever catalogue they are of, the newest first; none where the folder can't be read. */
export function backupsIn(folder: string): readonly NamedBackup[] {
  return namesIn(folder)
    .flatMap((name) => {
      const time = shape.exec(name)?.groups?.['time'];
      return time === undefined ? [] : [{ name, madeAt: readTime(time) }];
    })
    .sort((a, b) => (a.madeAt < b.madeAt ? 1 : -1));
}

/** The names in a folder; none where it can't be read. */
export function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function readTime(time: string): string {
  return time.replace(/^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)(\d{3})Z$/, '$1-$2-$3T$4:$5:$6.$7Z');
}
