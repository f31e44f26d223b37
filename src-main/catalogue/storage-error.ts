import type { StorageFault } from '../../shared-types/catalogue-file.ts';
import { failure, type Outcome } from '../../shared-types/outcome.ts';

/** A fault of the file or disk that a person can do something about; the message says what. */
export class StorageError extends Error {
  readonly fault: StorageFault;

  constructor(fault: StorageFault, message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'StorageError';
    this.fault = fault;
  }
}

/** The catalogue was written by a later Chargewright, whose tables this one does not know. */
export class NewerCatalogueError extends StorageError {
  constructor(file: string, found: number, known: number) {
    super(
      'newer',
      `The catalogue ${file} was written by a newer Chargewright (its tables are at step ${found}, this one knows ` +
        `${known}). Open it with the newer version; nothing was changed.`,
    );
    this.name = 'NewerCatalogueError';
  }
}

/** The tables could not be brought to the step that this Chargewright works with. */
export class NotBroughtUpError extends StorageError {
  constructor(file: string, found: number, wanted: number, cause: unknown) {
    const why = cause instanceof Error ? cause.message : String(cause);
    super(
      'not-brought-up',
      `The catalogue ${file} could not be brought from step ${found} of its tables to step ${wanted} (${why}). It was left as ` +
        'it was: the Chargewright that wrote it opens it still.',
      { cause },
    );
    this.name = 'NotBroughtUpError';
  }
}

/** Faults that one sentence tells whichever the file. */
type PlainFault = Exclude<StorageFault, 'newer' | 'not-brought-up'>;

const sentences: Readonly<Record<PlainFault, (catalogue: string) => string>> = {
  locked: (catalogue) =>
    `Another program is writing to ${catalogue}. Close it or wait a moment, then try again.`,
  'read-only': (catalogue) =>
    `Chargewright may not write to ${catalogue}. Check the permissions of the file and its folder, then try again.`,
  full: (catalogue) => `There is no room left on the disk for ${catalogue}. Free some space, then try again.`,
  damaged: (catalogue) =>
    `A part of ${catalogue} is damaged. Keep the file, and go on with a copy: your own, or one from the folder ` +
    'backups beside it.',
  'not-a-catalogue': (catalogue) =>
    `What stands in the place of ${catalogue} is not a Chargewright catalogue. Move it away or choose another ` +
    'folder; it was not changed.',
  missing: (catalogue) =>
    `There is nothing where ${catalogue} was. Connect the disk that it is on, or choose another.`,
  unreachable: (catalogue) =>
    `Chargewright cannot open ${catalogue}. Check that its folder exists, is a folder and may be read.`,
  'disk-fault': (catalogue) =>
    `The disk reported a fault while working on ${catalogue}. Copy the file to another disk, then look at this one.`,
};

export function storageError(fault: PlainFault, file?: string, cause?: unknown): StorageError {
  return new StorageError(
    fault,
    sentences[fault](file === undefined ? 'the catalogue' : `the catalogue ${file}`),
    { cause },
  );
}

/**
 * By the beginning of the code that SQLite (sqlite.org/rescode.html) or the file system gives.
 * SQLITE_CONSTRAINT is missing on purpose: a refused row is a fault of ours, because schemas stand before it.
 */
const faultOfCode: readonly (readonly [string, PlainFault])[] = [
  ['SQLITE_BUSY', 'locked'],
  ['SQLITE_LOCKED', 'locked'],
  ['SQLITE_READONLY', 'read-only'],
  ['SQLITE_PERM', 'read-only'],
  ['SQLITE_FULL', 'full'],
  ['SQLITE_CORRUPT', 'damaged'],
  ['SQLITE_NOTADB', 'not-a-catalogue'],
  ['SQLITE_CANTOPEN', 'unreachable'],
  // There was no room for the index of the WAL.
  ['SQLITE_IOERR_SHMSIZE', 'full'],
  ['SQLITE_IOERR', 'disk-fault'],
  ['EACCES', 'read-only'],
  ['EPERM', 'read-only'],
  ['EROFS', 'read-only'],
  ['ENOSPC', 'full'],
  ['EDQUOT', 'full'],
  ['ENOTDIR', 'unreachable'],
  ['EEXIST', 'unreachable'],
  ['ELOOP', 'unreachable'],
  ['ENAMETOOLONG', 'unreachable'],
];

/** The storage error behind something thrown, or null when it is something else. */
export function asStorageError(thrown: unknown, file?: string): StorageError | null {
  if (thrown instanceof StorageError) return thrown;
  if (!(thrown instanceof Error && 'code' in thrown && typeof thrown.code === 'string')) return null;
  const { code } = thrown;
  const known = faultOfCode.find(([start]) => code.startsWith(start));
  return known === undefined ? null : storageError(known[1], file, thrown);
}

/** Turns a storage error thrown by `work` into an answer to show; lets everything else through. */
export function withStorageOutcome<T>(work: () => Outcome<T>, file?: string): Outcome<T> {
  try {
    return work();
  } catch (thrown) {
    const error = asStorageError(thrown, file);
    if (error === null) throw thrown;
    return failure('storage', error.message);
  }
}
