import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { dirname, isAbsolute, join, relative } from 'node:path';
import { z } from 'zod';
import { StorageError } from './storage-error.ts';

/** The catalogue of a data folder in which nothing else was chosen. */
export const usualCatalogue = 'catalogue.sqlite3';

/** Says which catalogue is in use, once that is not the usual one any more. */
export const inUseNote = 'catalogue-in-use.json';

const note = z.strictObject({ file: z.string().min(1) });

export interface CatalogueInUse {
  readonly file: string;
  /** A catalogue that was chosen must be there; the usual one is made where it is missing. */
  readonly chosen: boolean;
}

/**
 * The catalogue that a data folder uses. Throws a `StorageError` when the note of it can't be read: to take the usual one
 * instead would show a rider an older state as if it were theirs.
 */
export function catalogueInUse(dataFolder: string): CatalogueInUse {
  const path = join(dataFolder, inUseNote);
  if (!existsSync(path)) return { file: join(dataFolder, usualCatalogue), chosen: false };
  const file = readNote(path);
  if (file === null)
    throw new StorageError(
      'unreachable',
      `The note ${path}, which says which catalogue is in use, can't be read. Choose the catalogue again; none was changed.`,
    );
  return { file: isAbsolute(file) ? file : join(dataFolder, file), chosen: true };
}

function readNote(path: string): string | null {
  try {
    return note.parse(JSON.parse(readFileSync(path, 'utf8'))).file;
  } catch {
    return null;
  }
}

/** Keeps the choice for the next start; within the data folder by its name alone, so that the folder can be moved. */
export function keepInUse(dataFolder: string, file: string): void {
  const kept = dirname(file) === dataFolder ? relative(dataFolder, file) : file;
  const path = join(dataFolder, inUseNote);
  const part = `${path}.part`;
  try {
    writeThrough(part, `${JSON.stringify({ file: kept } satisfies z.output<typeof note>)}\n`);
    renameSync(part, path);
  } finally {
    rmSync(part, { force: true });
  }
}

function writeThrough(path: string, text: string): void {
  const handle = openSync(path, 'w');
  try {
    writeSync(handle, text);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
