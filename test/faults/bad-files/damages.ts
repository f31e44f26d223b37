import Database from 'better-sqlite3';
import { mkdirSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { StorageFault } from '../../../shared-types/catalogue-file.ts';
import { inUseNote } from '../../../src-main/catalogue/in-use.ts';

/** What befell a catalogue's file, and what the workbench must say of it. */
export interface Damage {
  readonly words: string;
  /** Befalls a sound catalogue of `bytes`. */
  readonly befall: (file: string, bytes: Buffer) => void;
  readonly fault: StorageFault | readonly StorageFault[];
}

/** SQLite's page; a catalogue has the usual one (sqlite.org/pragma.html#pragma_page_size). */
const pageBytes = 4096;
/** Where the header tells the page size, and whose the file is (sqlite.org/fileformat.html#the_database_header). */
const pageSizeAt = 16;
const applicationIdAt = 68;

function changed(file: string, work: (db: Database.Database) => void): void {
  const db = new Database(file);
  work(db);
  db.close();
}

function overwritten(file: string, bytes: Buffer, at: number, by: readonly number[]): void {
  const copy = Buffer.from(bytes);
  copy.set(by, at);
  writeFileSync(file, copy);
}

const cut: readonly Damage[] = [
  // Its backups show that it is not a first start that came to nothing.
  { words: 'cut to nothing', befall: (file) => truncateSync(file, 0), fault: 'damaged' },
  {
    words: 'cut in its header',
    befall: (file) => truncateSync(file, 50),
    fault: ['damaged', 'not-a-catalogue'],
  },
  { words: 'cut in its first page', befall: (file) => truncateSync(file, pageBytes / 2), fault: 'damaged' },
  { words: 'cut after its first page', befall: (file) => truncateSync(file, pageBytes), fault: 'damaged' },
  { words: 'cut in half', befall: (file, bytes) => truncateSync(file, bytes.length / 2), fault: 'damaged' },
  {
    words: 'without its last page',
    befall: (file, bytes) => truncateSync(file, bytes.length - pageBytes),
    fault: 'damaged',
  },
  {
    words: 'of nothing but zeros',
    befall: (file, bytes) => writeFileSync(file, Buffer.alloc(bytes.length)),
    fault: 'not-a-catalogue',
  },
];

const otherHeaders: readonly Damage[] = [
  {
    words: 'with its first bytes overwritten',
    befall: (file, bytes) => overwritten(file, bytes, 0, [0xff, 0xd8, 0xff]),
    fault: 'not-a-catalogue',
  },
  {
    words: 'with another page size in its header',
    befall: (file, bytes) => overwritten(file, bytes, pageSizeAt, [0x02, 0x00]),
    fault: 'damaged',
  },
  {
    words: 'with no mark of whose it is',
    befall: (file, bytes) => overwritten(file, bytes, applicationIdAt, [0, 0, 0, 0]),
    fault: 'not-a-catalogue',
  },
  {
    words: 'of a newer version',
    befall: (file) => changed(file, (db) => void db.pragma('user_version = 990')),
    fault: 'newer',
  },
];

const otherThings: readonly Damage[] = [
  {
    words: 'in whose place is a database of another program',
    befall: (file) => {
      rmSync(file);
      changed(file, (db) => db.exec('CREATE TABLE recipes (name TEXT)'));
    },
    fault: 'not-a-catalogue',
  },
  {
    words: 'in whose place is a text',
    befall: (file) => writeFileSync(file, 'Packing list: tent, stove, mat. '.repeat(500)),
    fault: 'not-a-catalogue',
  },
  {
    words: 'in whose place is a short text',
    befall: (file) => writeFileSync(file, 'Tent.'),
    fault: 'not-a-catalogue',
  },
  {
    words: 'in whose place is a folder',
    befall: (file) => {
      rmSync(file);
      mkdirSync(file);
    },
    fault: 'unreachable',
  },
  {
    words: 'in whose place is a link to itself',
    befall: (file) => {
      rmSync(file);
      symlinkSync(file, file);
    },
    fault: 'unreachable',
  },
  {
    words: 'in whose place is a link to a disk that is away',
    befall: (file) => {
      rmSync(file);
      symlinkSync(join(dirname(file), 'away', 'catalogue.sqlite3'), file);
    },
    fault: ['missing', 'unreachable'],
  },
  {
    words: 'beside which a folder has the name of its WAL',
    befall: (file) => mkdirSync(`${file}-wal`),
    fault: 'unreachable',
  },
];

/** Of the note that says which catalogue is in use; the file beside it is sound. */
export const noteDamages: readonly Damage[] = [
  {
    words: 'whose note says another that is away',
    befall: (file) => writeFileSync(join(dirname(file), inUseNote), '{"file": "away.sqlite3"}'),
    fault: 'missing',
  },
  {
    words: 'whose note can not be read',
    befall: (file) => writeFileSync(join(dirname(file), inUseNote), '{"file": "aw'),
    fault: 'unreachable',
  },
];

export const fileDamages: readonly Damage[] = [...cut, ...otherHeaders, ...otherThings];
