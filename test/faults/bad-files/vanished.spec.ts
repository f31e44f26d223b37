import { mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { goodCatalogue, layCatalogue, type GoodCatalogue } from '../good-catalogue.ts';
import { expectWorks } from '../ways-on.ts';

let good: GoodCatalogue;
beforeAll(() => {
  good = goodCatalogue();
});

const { id: _, ...thing } = demoItems[0]!;
const refusal = { ok: false, error: { code: 'storage' } };

/** Windows lets nobody remove or move what is open. */
describe.skipIf(process.platform === 'win32')('a catalogue that is open refuses to save', () => {
  it('once its data folder was removed', async () => {
    const folder = join(temporaryFolder(), 'data');
    mkdirSync(folder);
    layCatalogue(folder, good);
    const workbench = workbenchOn(folder);
    rmSync(folder, { recursive: true });
    expect(await workbench.call('items.save', { item: thing })).toMatchObject(refusal);
    expect(workbench.faults).toEqual([]);
  });

  it('once another file took its place, until that one was opened', async () => {
    const folder = temporaryFolder();
    const file = layCatalogue(folder, good);
    const workbench = workbenchOn(folder);
    renameSync(file, `${file}.away`);
    layCatalogue(folder, good);
    expect(await workbench.call('items.save', { item: thing })).toMatchObject(refusal);
    await workbench.value('catalogue.openOther', { path: file });
    await expectWorks(workbench);
  });
});
