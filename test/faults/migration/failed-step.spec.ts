import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { connectToWrite, type WriteDb } from '../../../src-main/catalogue/connection.ts';
import { usualCatalogue } from '../../../src-main/catalogue/in-use.ts';
import { newestVersion, refuseUnfit } from '../../../src-main/catalogue/migrate.ts';
import { migrations } from '../../../src-main/catalogue/migrations.ts';
import {
  filledAt40,
  migratedTo,
  migrateTo,
  storeOldScenarios,
} from '../../src-main/catalogue/older-catalogue.ts';
import { storeOldItems } from '../../src-main/catalogue/older-items.ts';
import { storeOldTour } from '../../src-main/catalogue/older-tour.ts';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { isFullRun } from '../../support/full-run.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { backupNames, halfMadeFiles, unsoundBackups, unsoundParts } from '../sound-file.ts';
import { dumpOf } from '../catalogue-dump.ts';
import { expectReadsAndSaves, expectTrouble } from '../ways-on.ts';

const newest = newestVersion(migrations);
const olderSteps = migrations.map(({ version }) => version).filter((version) => version < newest);
const triedSteps = isFullRun ? olderSteps : [10, 30, 40, 100, 190, 220];

/** What another program put in the way of a later step, as late as possible, and what takes it away again. */
interface Obstacle {
  readonly put: string;
  readonly away: string;
}

function obstacleAt(step: number): Obstacle {
  // Step 40 makes the settings, the newest step adds this column to them.
  return step < 40
    ? { put: 'CREATE TABLE settings (theme TEXT)', away: 'DROP TABLE settings' }
    : { put: 'ALTER TABLE settings ADD COLUMN paper TEXT', away: 'ALTER TABLE settings DROP COLUMN paper' };
}

/** A catalogue as this step left it, with what one could hold then. */
function filledAt(step: number, file: string): WriteDb {
  if (step >= 40) {
    const db = filledAt40(file);
    migrateTo(db, step);
    return db;
  }
  const db = migratedTo(step, file);
  storeOldItems(db);
  if (step >= 20) storeOldTour(db);
  if (step >= 30) storeOldScenarios(db);
  return db;
}

function changed(file: string, sql: string): void {
  const db = connectToWrite(file);
  db.exec(sql);
  db.close();
}

/** Opens it as the Chargewright that knew no later step does, and saves. */
function saveAsOlder(file: string, step: number): void {
  const db = connectToWrite(file);
  refuseUnfit(
    db,
    file,
    migrations.filter(({ version }) => version <= step),
  );
  migrateTo(db, step);
  db.exec("UPDATE items SET notes = 'Changed since.' WHERE id = 'old-bank'");
  db.close();
}

it.each(triedSteps)('leaves a catalogue of step %d as it was where a later step fails', async (step) => {
  const folder = temporaryFolder();
  const file = join(folder, usualCatalogue);
  const { put, away } = obstacleAt(step);
  filledAt(step, file).close();
  changed(file, put);
  const before = dumpOf(file);
  const failing = workbenchOn(folder);
  const { message } = await expectTrouble(failing, ['not-brought-up']);
  expect(message).toContain(`from step ${step} of its tables to step ${newest}`);
  expect(dumpOf(file)).toEqual(before);
  expect([unsoundParts(file), unsoundBackups(folder), halfMadeFiles(folder)]).toEqual([[], [], []]);
  expect(backupNames(folder)).toEqual([expect.stringMatching(`-step-${step}.sqlite3$`)]);
  expect(dumpOf(join(folder, 'backups', backupNames(folder)[0]!))).toEqual(before);
  // Its one backup is what it is itself, so that there is no way back but to another file.
  const beside = readdirSync(folder);
  expect(await failing.call('catalogue.restore', { name: null })).toMatchObject({ ok: false });
  expect(readdirSync(folder)).toEqual(beside);
  failing.close();
  saveAsOlder(file, step);
  changed(file, away);
  const workbench = workbenchOn(folder);
  await expectReadsAndSaves(workbench);
  const items = await workbench.value('items.list', {});
  expect(items.find(({ id }) => id === 'old-bank')).toMatchObject({ notes: 'Changed since.' });
});
