import Database from 'better-sqlite3';
import { copyFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { backupFolder } from '../../../src-main/catalogue/backup.ts';
import { connectToRead, inMemory, type WriteDb } from '../../../src-main/catalogue/connection.ts';
import { listItems, saveItem, setItemState } from '../../../src-main/catalogue/items.ts';
import { schemaVersion } from '../../../src-main/catalogue/migrate.ts';
import { openCatalogue } from '../../../src-main/catalogue/open.ts';
import { listScenarios } from '../../../src-main/catalogue/scenarios.ts';
import { readSettings } from '../../../src-main/catalogue/settings.ts';
import { listTours } from '../../../src-main/catalogue/tours.ts';
import { NewerCatalogueError, StorageError } from '../../../src-main/catalogue/storage-error.ts';
import { demoItems } from '../../../db/demo/demo.ts';
import {
  filledAt100,
  filledAt40,
  filledAt70,
  migratedTo,
  oldScenarios,
  oldSettings,
  rowsOf,
} from './older-catalogue.ts';
import { oldItems, storeOldItems } from './older-items.ts';
import { oldTour } from './older-tour.ts';
import { opened, temporaryFile, temporaryFolder, thrownBy } from './temporary-catalogue.ts';

const phone = demoItems[0]!;

function savePhone(write: WriteDb): void {
  const { id, ...draft } = phone;
  saveItem(write, draft, id);
}

function fileMadeBy(work: (db: Database.Database) => void): string {
  const file = temporaryFile();
  const db = new Database(file);
  work(db);
  db.close();
  return file;
}

function refusal(file: string): { fault: string; untouched: boolean; message: string } {
  const before = readFileSync(file);
  const thrown = thrownBy(() => openCatalogue(file));
  if (!(thrown instanceof StorageError)) throw new Error('openCatalogue() did not refuse the file');
  return {
    fault: thrown.fault,
    untouched: before.equals(readFileSync(file)),
    message: thrown.message,
  };
}

describe('openCatalogue() refuses', () => {
  it('a file of a newer version, and leaves it untouched', () => {
    const file = temporaryFile();
    openCatalogue(file).close();
    const db = new Database(file);
    db.pragma('user_version = 990');
    db.close();
    expect(thrownBy(() => openCatalogue(file))).toBeInstanceOf(NewerCatalogueError);
    expect(refusal(file)).toMatchObject({ fault: 'newer', untouched: true });
    expect(refusal(file).message).toContain('at step 990');
  });

  it('a file that is no database, and leaves it untouched', () => {
    const file = temporaryFile();
    writeFileSync(file, 'Packing list: tent, stove, mat. '.repeat(200));
    expect(refusal(file)).toMatchObject({ fault: 'not-a-catalogue', untouched: true });
  });

  it('a database of another program, and leaves it untouched', () => {
    const file = fileMadeBy((db) => db.exec('CREATE TABLE recipes (name TEXT)'));
    expect(refusal(file)).toMatchObject({ fault: 'not-a-catalogue', untouched: true });
  });

  it('a damaged catalogue, and leaves it untouched', () => {
    const file = temporaryFile();
    openCatalogue(file).close();
    const bytes = readFileSync(file);
    // Page 1 (4096 bytes) tells what the file is; the pages after it hold the tables.
    bytes.fill(0xab, 4096, 5 * 4096);
    writeFileSync(file, bytes);
    expect(refusal(file)).toMatchObject({ fault: 'damaged', untouched: true });
  });

  it('a folder that is really a file', () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'data'), '');
    const thrown = thrownBy(() => openCatalogue(join(folder, 'data', 'catalogue.sqlite')));
    expect(thrown).toMatchObject({ fault: 'unreachable' });
  });

  it('a path that is a folder, and names it', () => {
    const folder = temporaryFolder();
    const thrown = thrownBy(() => openCatalogue(folder));
    expect(thrown).toMatchObject({ fault: 'unreachable' });
    expect((thrown as Error).message).toContain(folder);
  });

  it('leaves no side files behind', () => {
    const file = temporaryFile();
    openCatalogue(file).close();
    const db = new Database(file);
    db.pragma('user_version = 990');
    db.close();
    thrownBy(() => openCatalogue(file));
    expect(readdirSync(join(file, '..'))).toEqual(['catalogue.sqlite']);
  });
});

describe('openCatalogue()', () => {
  it('makes a missing folder and file', () => {
    const file = join(temporaryFolder(), 'deep', 'deeper', 'catalogue.sqlite');
    opened(file);
    expect(existsSync(file)).toBe(true);
  });

  it('takes an empty file for a new catalogue', () => {
    const file = temporaryFile();
    writeFileSync(file, '');
    expect(listItems(opened(file).read)).toEqual([]);
  });

  it('writes ahead, flushes every save, enforces references', () => {
    const { write } = opened();
    const settings = ['journal_mode', 'synchronous', 'foreign_keys', 'busy_timeout'];
    const values = settings.map((name) => write.pragma(name, { simple: true }));
    // sqlite.org/pragma.html: synchronous 2 is FULL.
    expect(values).toEqual(['wal', 2, 1, 2000]);
  });

  it('gives a read handle that cannot write', () => {
    const { read } = opened();
    expect(() => read.exec('DELETE FROM items')).toThrow(/readonly/);
  });

  it('shows the read handle what the write handle saved', () => {
    const { read, write } = opened();
    savePhone(write);
    expect(listItems(read)).toEqual([phone]);
  });

  it('keeps what was saved when opened again', () => {
    const file = temporaryFile();
    const first = openCatalogue(file);
    savePhone(first.write);
    first.close();
    expect(listItems(opened(file).read)).toEqual([phone]);
  });

  it('tidies side files away when closed', () => {
    const file = temporaryFile();
    openCatalogue(file).close();
    expect(readdirSync(join(file, '..'))).toEqual(['catalogue.sqlite']);
  });

  it('works in memory without touching the disk', () => {
    const { read, write } = opened(inMemory);
    savePhone(write);
    expect(listItems(read)).toHaveLength(1);
    expect(existsSync(inMemory)).toBe(false);
  });

  it('keeps a save when the program dies before it closes', () => {
    const file = temporaryFile();
    savePhone(opened(file).write);
    const afterwards = temporaryFile();
    for (const part of ['', '-wal']) copyFileSync(`${file}${part}`, `${afterwards}${part}`);
    expect(listItems(opened(afterwards).read)).toEqual([phone]);
  });

  it('loses nothing but the unfinished save in a crash', () => {
    const file = temporaryFile();
    const { write } = opened(file);
    savePhone(write);
    write.exec("BEGIN IMMEDIATE; UPDATE items SET label = 'Half saved'");
    const afterwards = temporaryFile();
    for (const part of ['', '-wal']) copyFileSync(`${file}${part}`, `${afterwards}${part}`);
    write.exec('ROLLBACK');
    expect(listItems(opened(afterwards).read)).toEqual([phone]);
  });

  it('opens twice, and both see what either saved', () => {
    const file = temporaryFile();
    const [first, second] = [opened(file), opened(file)];
    savePhone(first.write);
    setItemState(second.write, phone.id, 'retired');
    expect(listItems(first.read)).toEqual([{ ...phone, state: 'retired' }]);
  });

  it('backs an older catalogue up before it migrates', () => {
    const file = temporaryFile();
    const older = migratedTo(10, file);
    storeOldItems(older);
    const [items, hubs] = [rowsOf(older, 'items'), rowsOf(older, 'generator_hubs')];
    older.close();
    expect(listItems(opened(file).read)).toEqual(oldItems);
    const [copy = '', ...more] = readdirSync(backupFolder(file));
    expect([copy, more]).toEqual([expect.stringMatching(/-step-10\.sqlite$/), []]);
    const before = connectToRead(join(backupFolder(file), copy));
    onTestFinished(() => void before.close());
    expect([schemaVersion(before), rowsOf(before, 'items'), rowsOf(before, 'generator_hubs')]).toEqual([
      10,
      items,
      hubs,
    ]);
  });

  it.each([
    [40, filledAt40],
    [70, filledAt70],
    [100, filledAt100],
  ])('opens a catalogue of version %d with all it holds', (version, filledAt) => {
    const file = temporaryFile();
    filledAt(file).close();
    const { read } = opened(file);
    expect([listItems(read), listTours(read)]).toEqual([oldItems, [oldTour]]);
    expect(listScenarios(read)).toEqual(oldScenarios);
    expect(readSettings(read)).toEqual(oldSettings);
    expect(read.pragma('foreign_key_check')).toEqual([]);
    expect(readdirSync(backupFolder(file))).toEqual([
      expect.stringMatching(new RegExp(`-step-${version}\\.sqlite$`)),
    ]);
  });

  it('makes no backup of a new catalogue', () => {
    const file = temporaryFile();
    openCatalogue(file).close();
    expect(existsSync(backupFolder(file))).toBe(false);
  });

  it('makes one backup on each day it is opened', () => {
    const file = temporaryFile();
    openCatalogue(file).close();
    for (const now of ['2027-05-03T06:00Z', '2027-05-03T21:00Z', '2027-05-04T00:01Z'])
      openCatalogue(file, { now: new Date(now) }).close();
    expect(readdirSync(backupFolder(file))).toEqual([
      'catalogue-20270503T060000000Z-step-230.sqlite',
      'catalogue-20270504T000100000Z-step-230.sqlite',
    ]);
  });

  it('opens without its backup where none can be made, and says why', () => {
    const file = temporaryFile();
    openCatalogue(file).close();
    writeFileSync(backupFolder(file), 'a file where the folder should be');
    const catalogue = openCatalogue(file);
    onTestFinished(() => catalogue.close());
    expect(catalogue.backupFault).toMatch(/EEXIST|ENOTDIR/);
    expect(listItems(catalogue.read)).toEqual([]);
  });

  it('does not open an older catalogue that it can not back up', () => {
    const file = temporaryFile();
    migratedTo(10, file).close();
    writeFileSync(backupFolder(file), 'a file where the folder should be');
    expect(refusal(file)).toMatchObject({ fault: 'unreachable', untouched: true });
  });

  it('refuses a chosen file that is gone, and makes none', () => {
    const file = temporaryFile();
    expect(thrownBy(() => openCatalogue(file, { mustExist: true }))).toMatchObject({ fault: 'missing' });
    expect(existsSync(file)).toBe(false);
  });
});
