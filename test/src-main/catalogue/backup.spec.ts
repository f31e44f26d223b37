import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  backUp,
  backUpOnce,
  backupFolder,
  backupsKept,
  sweepHalfMade,
} from '../../../src-main/catalogue/backup.ts';
import { loadDemoIfEmpty } from '../../../src-main/catalogue/demo.ts';
import { listItems } from '../../../src-main/catalogue/items.ts';
import { demoItems } from '../../../db/demo/demo.ts';
import { opened, temporaryFile } from './temporary-catalogue.ts';

const noon = Date.UTC(2027, 4, 3, 12);
const hour = 3_600_000;

describe('backUp()', () => {
  it('throws and leaves no copy when none can be made', () => {
    const file = temporaryFile();
    const { write } = opened(file);
    const name = 'catalogue-20270503T120000000Z-step-230.sqlite';
    mkdirSync(join(backupFolder(file), name), { recursive: true });
    writeFileSync(join(backupFolder(file), name, 'in-the-way'), '');
    expect(() => backUp(write, file, new Date(noon))).toThrow();
    expect(readdirSync(backupFolder(file))).toEqual([name]);
  });

  it('copies the whole catalogue beside it', () => {
    const file = temporaryFile();
    const { write } = opened(file);
    loadDemoIfEmpty(write);
    const copy = backUp(write, file);
    expect(listItems(opened(copy).read)).toHaveLength(demoItems.length);
  });

  it('names the copy by time and version', () => {
    const file = temporaryFile();
    const copy = backUp(opened(file).write, file, new Date(noon));
    expect(basename(copy)).toBe('catalogue-20270503T120000000Z-step-230.sqlite');
  });

  it('keeps the last ten, and nothing half made', () => {
    const file = temporaryFile();
    const { write } = opened(file);
    const copies = Array.from({ length: 13 }, (_, index) =>
      backUp(write, file, new Date(noon + index * hour)),
    );
    expect(backupsKept).toBe(10);
    expect(readdirSync(backupFolder(file)).sort()).toEqual(copies.slice(-10).map((copy) => basename(copy)));
  });

  it('makes no second copy of what is the same, where a start is tried again', () => {
    const file = temporaryFile();
    const { write } = opened(file);
    loadDemoIfEmpty(write);
    const first = backUpOnce(write, file, new Date(noon));
    expect(backUpOnce(write, file, new Date(noon + hour))).toBe(first);
    write.exec("UPDATE items SET label = 'Another'");
    const second = backUpOnce(write, file, new Date(noon + 2 * hour));
    expect(readdirSync(backupFolder(file)).sort()).toEqual([first, second].map((copy) => basename(copy)));
  });

  it('sweeps away what a kill left half-made, and nothing of others', () => {
    const file = temporaryFile();
    opened(file);
    mkdirSync(backupFolder(file));
    const halfMade = ['catalogue-2.sqlite.part', 'catalogue-2.sqlite.part-journal'];
    const others = ['recipes.sqlite.part', 'catalogue-of-stars-2.sqlite.part', 'catalogue-2.sqlite'];
    const halfBackup = 'catalogue-20270503T120000000Z-step-230.sqlite.part';
    for (const name of [...halfMade, ...others]) writeFileSync(join(dirname(file), name), '');
    writeFileSync(join(backupFolder(file), halfBackup), '');
    sweepHalfMade(file);
    expect(readdirSync(backupFolder(file))).toEqual([]);
    expect(readdirSync(dirname(file))).toEqual(expect.arrayContaining(others));
    expect(readdirSync(dirname(file)).filter((name) => halfMade.includes(name))).toEqual([]);
  });

  it('never removes files of another name', () => {
    const file = temporaryFile();
    const { write } = opened(file);
    mkdirSync(backupFolder(file));
    const own = ['catalogue-before-the-big-tour.sqlite', 'notes.txt'];
    for (const name of own) writeFileSync(join(backupFolder(file), name), '');
    for (let index = 0; index < 12; index++) backUp(write, file, new Date(noon + index * hour));
    expect(readdirSync(backupFolder(file))).toEqual(expect.arrayContaining(own));
    expect(readdirSync(backupFolder(file))).toHaveLength(12);
  });
});
