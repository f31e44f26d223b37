import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { backUp, backupFolder } from '../../../src-main/catalogue/backup.ts';
import { copyBackup, freeBeside, listBackups, listBeside } from '../../../src-main/catalogue/beside.ts';
import { loadDemoIfEmpty } from '../../../src-main/catalogue/demo.ts';
import { listItems } from '../../../src-main/catalogue/items.ts';
import { migrations } from '../../../src-main/catalogue/migrations.ts';
import { demoItems, demoScenarios, demoTours } from '../../../db/demo/demo.ts';
import { migratedTo } from './older-catalogue.ts';
import { opened, temporaryFolder } from './temporary-catalogue.ts';

const noon = Date.UTC(2027, 4, 3, 12);
const dayMs = 86_400_000;

function demoIn(folder: string) {
  const file = join(folder, 'catalogue.sqlite3');
  const { write } = opened(file);
  loadDemoIfEmpty(write);
  return { file, write };
}

const holdsDemo = {
  items: demoItems.length,
  tours: demoTours.length,
  scenarios: demoScenarios.length,
  readings: 0,
};

describe('beside a catalogue', () => {
  it('a new one takes a name that nothing has, not even a log left behind', () => {
    const folder = temporaryFolder();
    for (const name of ['catalogue-2.sqlite3', 'catalogue-3.sqlite3-wal'])
      writeFileSync(join(folder, name), '');
    expect(freeBeside(join(folder, 'catalogue-2.sqlite3'))).toBe(join(folder, 'catalogue-4.sqlite3'));
  });

  it('a damaged backup is no copy, and leaves nothing', () => {
    const { file, write } = demoIn(temporaryFolder());
    const backup = backUp(write, file, new Date(noon));
    writeFileSync(backup, readFileSync(backup).fill(0xab, 4096));
    expect(() => copyBackup(backup, freeBeside(file))).toThrow();
    expect(readdirSync(dirname(file)).filter((name) => name.includes('-2'))).toEqual([]);
  });

  it('a backup is copied whole, and stays', () => {
    const { file, write } = demoIn(temporaryFolder());
    const backup = backUp(write, file, new Date(noon));
    const before = readFileSync(backup);
    const copy = freeBeside(file);
    copyBackup(backup, copy);
    expect(basename(copy)).toBe('catalogue-2.sqlite3');
    expect(listItems(opened(copy).read)).toHaveLength(demoItems.length);
    expect(readFileSync(backup).equals(before)).toBe(true);
  });

  it('backups stand the newest first, with what they hold or why they are of no use', () => {
    const { file, write } = demoIn(temporaryFolder());
    const names = [0, 1, 2].map((day) => backUp(write, file, new Date(noon + day * dayMs)));
    writeFileSync(names[1]!, 'cut off');
    const backups = listBackups(file);
    expect(backups.map(({ name }) => join(backupFolder(file), name))).toEqual(names.toReversed());
    expect(backups.map(({ holds }) => holds)).toEqual([holdsDemo, null, holdsDemo]);
    expect(backups[1]).toMatchObject({
      bytes: 7,
      unfit: 'It is no Chargewright catalogue.',
    });
  });

  it('other catalogues are listed, older, newer and broken ones too', () => {
    const folder = temporaryFolder();
    const { file } = demoIn(folder);
    migratedTo(10, join(folder, 'older.sqlite3')).close();
    const newer = migratedTo(migrations.at(-1)!.version, join(folder, 'newer.sqlite3'));
    newer.pragma('user_version = 990');
    newer.close();
    writeFileSync(join(folder, 'empty.sqlite3'), '');
    writeFileSync(join(folder, 'notes.txt'), '');
    const beside = listBeside([folder, folder], file);
    const found = Object.fromEntries(
      beside.map(({ path, unfit, holds }) => [basename(path), [holds?.items ?? null, unfit]]),
    );
    expect(found).toEqual({
      'older.sqlite3': [0, null],
      'newer.sqlite3': [null, 'A newer Chargewright wrote it.'],
      'empty.sqlite3': [0, null],
    });
    expect(listBeside([join(folder, 'gone')], file)).toEqual([]);
  });
});
