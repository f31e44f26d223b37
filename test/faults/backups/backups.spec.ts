import Database from 'better-sqlite3';
import { copyFileSync, readdirSync, readFileSync, renameSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { nameBackup } from '../../../src-main/catalogue/backup-names.ts';
import { backUp, backupsKept } from '../../../src-main/catalogue/backup.ts';
import { usualCatalogue } from '../../../src-main/catalogue/in-use.ts';
import { openCatalogue } from '../../../src-main/catalogue/open.ts';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { fingerprint } from '../fingerprint.ts';
import { goodCatalogue, layCatalogue, type GoodCatalogue } from '../good-catalogue.ts';
import { backupNames, unsoundBackups } from '../sound-file.ts';
import { expectTrouble, expectWorks } from '../ways-on.ts';

let good: GoodCatalogue;
beforeAll(() => {
  good = goodCatalogue();
});

/** Gives a data folder's one backup another date. */
function dateBackup(dataFolder: string, at: string): void {
  const folder = join(dataFolder, 'backups');
  const [only = ''] = backupNames(dataFolder);
  renameSync(join(folder, only), join(folder, nameBackup(usualCatalogue, 230, new Date(at))));
}

/** Backups of `count` days before 2020, one a day. */
function layBackups(dataFolder: string, count: number): void {
  for (let day = 1; day <= count; day += 1) {
    const name = nameBackup(usualCatalogue, 230, new Date(Date.UTC(2019, 11, day)));
    writeFileSync(join(dataFolder, 'backups', name), good.backup);
  }
}

describe('a backup', () => {
  it('is made at the first start of a day, and not at the second', () => {
    const folder = temporaryFolder();
    layCatalogue(folder, good);
    dateBackup(folder, '2020-01-01T12:00:00Z');
    workbenchOn(folder).close();
    workbenchOn(folder).close();
    expect(backupNames(folder)).toHaveLength(2);
    expect(unsoundBackups(folder)).toEqual([]);
  });

  it(`of the oldest days goes beyond ${backupsKept} of them`, () => {
    const folder = temporaryFolder();
    layCatalogue(folder, good);
    dateBackup(folder, '2020-01-01T12:00:00Z');
    layBackups(folder, backupsKept + 5);
    workbenchOn(folder).close();
    const names = backupNames(folder);
    expect(names).toHaveLength(backupsKept);
    expect(names.at(-2)).toContain('-20200101T');
    expect(names[0]).toContain('-20191208T');
    expect(unsoundBackups(folder)).toEqual([]);
  });

  it('that was cut or is empty is shown as unfit, and the newest sound one is restored', async () => {
    const folder = temporaryFolder();
    layCatalogue(folder, good);
    dateBackup(folder, '2019-01-01T12:00:00Z');
    layBackups(folder, 2);
    const [, cut = '', empty = ''] = backupNames(folder);
    truncateSync(join(folder, 'backups', cut), 9000);
    truncateSync(join(folder, 'backups', empty), 0);
    const workbench = workbenchOn(folder);
    const { backups } = await workbench.value('catalogue.choices', {});
    const unfit = backups.filter((backup) => backup.unfit !== null).map(({ name }) => name);
    expect(unfit.toSorted()).toEqual([cut, empty].toSorted());
    for (const name of [cut, empty])
      expect(await workbench.call('catalogue.restore', { name })).toMatchObject({ ok: false });
    await workbench.value('catalogue.restore', { name: null });
    expect(await workbench.value('items.list', {})).toHaveLength(good.things);
    await expectWorks(workbench);
    expect(workbench.faults).toEqual([]);
  });

  it('is passed over where it can not be brought up, for the newest before it that can be used', async () => {
    const folder = temporaryFolder();
    const file = layCatalogue(folder, good);
    dateBackup(folder, '2020-01-01T12:00:00Z');
    // Its tables are at the newest step already: to bring them up from an older one must fail.
    const db = new Database(file);
    db.pragma('user_version = 220');
    db.close();
    const workbench = workbenchOn(folder);
    await expectTrouble(workbench, ['not-brought-up']);
    expect(backupNames(folder)).toHaveLength(2);
    await workbench.value('catalogue.restore', { name: null });
    expect(await workbench.value('items.list', {})).toHaveLength(good.things);
    await expectWorks(workbench);
    expect(readdirSync(folder)).not.toContain('catalogue-3.sqlite3');
  });

  it('is the only thing taken for one, whatever else lies in its folder', async () => {
    const folder = temporaryFolder();
    const file = layCatalogue(folder, good);
    const [name = ''] = backupNames(folder);
    const backup = join(folder, 'backups', name);
    // A copy of the catalogue's own file: whoever looks into it makes side files beside it.
    copyFileSync(file, backup);
    for (const end of ['-wal', '-shm', '-journal', '.part']) writeFileSync(`${backup}${end}`, '');
    const workbench = workbenchOn(folder);
    for (let look = 0; look < 2; look += 1) {
      const { backups } = await workbench.value('catalogue.choices', {});
      expect(backups).toMatchObject([{ name, unfit: null, holds: { items: good.things } }]);
    }
    await workbench.value('catalogue.restore', { name: null });
    expect(await workbench.value('items.list', {})).toHaveLength(good.things);
  });

  it('takes the place of the catalogue by a copy, and leaves both as they are', async () => {
    const folder = temporaryFolder();
    const file = layCatalogue(folder, good);
    const [name = ''] = backupNames(folder);
    const workbench = workbenchOn(folder);
    await workbench.value('settings.save', { settings: await workbench.value('settings.get', {}) });
    await expectWorks(workbench);
    await workbench.value('catalogue.restore', { name });
    expect(await workbench.value('items.list', {})).toHaveLength(good.things);
    const left = fingerprint(file);
    await expectWorks(workbench);
    workbench.close();
    expect(fingerprint(file)).toEqual(left);
    expect(readFileSync(join(folder, 'backups', name)).equals(good.backup)).toBe(true);
    const next = workbenchOn(folder);
    expect(await next.value('items.list', {})).toHaveLength(good.things + 1);
    await next.value('catalogue.openOther', { path: file });
    expect(await next.value('items.list', {})).toHaveLength(good.things + 1);
    expect(next.faults).toEqual([]);
  });

  it('of another catalogue in the same folder is never removed for one more of this', () => {
    const folder = temporaryFolder();
    layCatalogue(folder, good);
    const other = join(
      folder,
      'backups',
      nameBackup('winter.sqlite3', 230, new Date('2019-01-01T00:00:00Z')),
    );
    writeFileSync(other, good.backup);
    layBackups(folder, backupsKept);
    const catalogue = openCatalogue(join(folder, usualCatalogue));
    backUp(catalogue.write, join(folder, usualCatalogue));
    catalogue.close();
    expect(readdirSync(join(folder, 'backups'))).toHaveLength(backupsKept + 1);
    expect(readFileSync(other).equals(good.backup)).toBe(true);
  });
});
