import { readdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { fingerprint } from '../fingerprint.ts';
import { goodCatalogue, layCatalogue, type GoodCatalogue } from '../good-catalogue.ts';
import { halfMadeFiles, unsoundBackups, unsoundParts } from '../sound-file.ts';
import { expectTrouble, expectWorks } from '../ways-on.ts';
import { hasSmallDisks, smallDisk, whyNoSmallDisk } from './small-disk.ts';

const diskBytes = 8_000_000;
const { id: _, ...thing } = demoItems[0]!;
const noRoom = {
  ok: false,
  error: { code: 'storage', message: expect.stringContaining('no room') as string },
};

let good: GoodCatalogue;
beforeAll(() => {
  good = goodCatalogue();
});

/** Backups of an earlier day. */
function ageBackups(dataFolder: string): void {
  const folder = join(dataFolder, 'backups');
  for (const name of readdirSync(folder))
    renameSync(join(folder, name), join(folder, name.replace(/-\d{8}T/, '-20200101T')));
}

describe.skipIf(!hasSmallDisks)(`on a full disk${whyNoSmallDisk}`, () => {
  it('refuses the save that has no room, keeps those before, and goes on once there is room', async () => {
    const disk = smallDisk(diskBytes);
    const file = layCatalogue(disk.folder, good);
    const workbench = workbenchOn(disk.folder);
    disk.fill(200_000);
    let saved = 0;
    const item = { ...thing, notes: 'n'.repeat(2000) };
    for (;;) {
      const outcome = await workbench.call('items.save', { item });
      if (!outcome.ok) {
        expect(outcome).toMatchObject(noRoom);
        break;
      }
      saved += 1;
    }
    expect(saved).toBeGreaterThan(0);
    expect(await workbench.value('items.list', {})).toHaveLength(good.things + saved);
    disk.clear();
    await expectWorks(workbench);
    expect(await workbench.value('items.list', {})).toHaveLength(good.things + saved + 1);
    expect(workbench.faults).toEqual([]);
    workbench.close();
    expect(unsoundParts(file)).toEqual([]);
  });

  it('names a start that has no room, leaves the file as it is, and opens it once there is room', async () => {
    const disk = smallDisk(diskBytes);
    const file = layCatalogue(disk.folder, good);
    const before = fingerprint(file);
    disk.fill(0);
    const workbench = workbenchOn(disk.folder);
    await expectTrouble(workbench, ['full']);
    expect(fingerprint(file)).toEqual(before);
    disk.clear();
    expect(await workbench.value('catalogue.tryAgain', {})).toMatchObject({ trouble: null });
    await expectWorks(workbench);
  });

  it('names a first start that has no room, and begins once there is room', async () => {
    const disk = smallDisk(diskBytes);
    disk.fill(100_000);
    const workbench = workbenchOn(disk.folder);
    await expectTrouble(workbench, ['full']);
    disk.clear();
    expect(await workbench.value('catalogue.tryAgain', {})).toMatchObject({ trouble: null });
    expect(await workbench.value('items.list', {})).toHaveLength(demoItems.length);
    await expectWorks(workbench);
  });

  it('opens without the backup of the day, says so, and shows no half-made one', async () => {
    const disk = smallDisk(diskBytes);
    layCatalogue(disk.folder, good);
    ageBackups(disk.folder);
    disk.fill(150_000);
    const workbench = workbenchOn(disk.folder);
    const { trouble, backupFault } = await workbench.value('catalogue.state', {});
    expect([trouble, backupFault]).toEqual([null, expect.stringContaining('no room')]);
    const { backups } = await workbench.value('catalogue.choices', {});
    expect(backups.map(({ unfit }) => unfit)).toEqual([null]);
    expect(halfMadeFiles(disk.folder)).toEqual([]);
    expect(await workbench.call('catalogue.backUp', {})).toMatchObject(noRoom);
    expect([unsoundBackups(disk.folder), halfMadeFiles(disk.folder)]).toEqual([[], []]);
  });

  it('leaves nothing half-made beside the catalogue where another has no room there', async () => {
    const disk = smallDisk(diskBytes);
    layCatalogue(disk.folder, good);
    const workbench = workbenchOn(disk.folder);
    disk.fill(100_000);
    const before = readdirSync(disk.folder);
    expect(await workbench.call('catalogue.restore', { name: null })).toMatchObject(noRoom);
    expect(await workbench.call('catalogue.startEmpty', {})).toMatchObject(noRoom);
    expect(readdirSync(disk.folder)).toEqual(before);
    expect(await workbench.value('items.list', {})).toHaveLength(good.things);
    disk.clear();
    await expectWorks(workbench);
    expect(await workbench.call('catalogue.startEmpty', {})).toMatchObject({ ok: true });
    await expectWorks(workbench);
  });
});
