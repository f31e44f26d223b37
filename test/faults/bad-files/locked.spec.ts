import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { resolve } from 'node:path';
import { beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { dumpOf } from '../catalogue-dump.ts';
import { goodCatalogue, layCatalogue, type GoodCatalogue } from '../good-catalogue.ts';
import { layOlder } from '../older-folder.ts';
import { expectTrouble, expectWorks } from '../ways-on.ts';

let good: GoodCatalogue;
beforeAll(() => {
  good = goodCatalogue();
});

const root = resolve(import.meta.dirname, '../../..');

/** Another program, which holds the file by these SQL statements until it is told to let go. */
async function heldBy(file: string, sql: string): Promise<() => Promise<void>> {
  const hold = `
    const Database = require('better-sqlite3');
    const db = new Database(process.argv[1]);
    db.exec(process.argv[2]);
    process.stdout.write('held');
    process.stdin.resume();
    process.stdin.once('end', () => db.close());`;
  const holder = spawn(process.execPath, ['--eval', hold, file, sql], {
    cwd: root,
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const letGo = async (): Promise<void> => {
    if (holder.exitCode !== null) return;
    holder.stdin.end();
    await once(holder, 'exit');
  };
  onTestFinished(letGo);
  await once(holder.stdout, 'data');
  return letGo;
}

describe('a catalogue that another program', () => {
  it('keeps for itself is named as locked, left as it is, and brought up once that lets go', async () => {
    const folder = temporaryFolder();
    const file = layOlder(folder, 70);
    const before = dumpOf(file);
    const letGo = await heldBy(file, 'PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE');
    const workbench = workbenchOn(folder);
    await expectTrouble(workbench, ['locked']);
    await letGo();
    expect(dumpOf(file)).toEqual(before);
    expect(await workbench.value('catalogue.tryAgain', {})).toMatchObject({ trouble: null });
    expect(await workbench.value('items.list', {})).toHaveLength(before.tables['items']!.length);
    await expectWorks(workbench);
  });

  it('writes to can be read; a save is refused as long as that lasts, and taken afterwards', async () => {
    const folder = temporaryFolder();
    const file = layCatalogue(folder, good);
    const workbench = workbenchOn(folder);
    const letGo = await heldBy(file, 'BEGIN EXCLUSIVE');
    expect(await workbench.value('items.list', {})).toHaveLength(good.things);
    const settings = await workbench.value('settings.get', {});
    const busy = {
      ok: false,
      error: { code: 'storage', message: expect.stringContaining('Another program') as string },
    };
    expect(await workbench.call('settings.save', { settings })).toMatchObject(busy);
    await letGo();
    await expectWorks(workbench);
  });
});
