import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { usualCatalogue } from '../../../src-main/catalogue/in-use.ts';
import { saveItem } from '../../../src-main/catalogue/items.ts';
import { openCatalogue } from '../../../src-main/catalogue/open.ts';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { cases } from '../../support/full-run.ts';
import { workbenchOn, type TestWorkbench } from '../../support/open-workbench.ts';
import { diceOf } from '../dice.ts';
import { fingerprint } from '../fingerprint.ts';
import { goodCatalogue, layCatalogue, type GoodCatalogue } from '../good-catalogue.ts';
import { expectTrouble, expectWaysOn, expectWorks } from '../ways-on.ts';

const saves = 30;
const seed = 20_270_506;
const { id: _, ...thing } = demoItems[0]!;

let good: GoodCatalogue;
beforeAll(() => {
  good = goodCatalogue();
});

/** What lies beside the file of `good` after a kill, with 30 saves that were not yet put into it. */
function unclosedWal(): Buffer {
  const folder = temporaryFolder();
  const { write, ...catalogue } = openCatalogue(layCatalogue(folder, good));
  for (let n = 0; n < saves; n += 1) saveItem(write, { ...thing, label: labelOf(n) });
  const wal = readFileSync(join(folder, `${usualCatalogue}-wal`));
  catalogue.close();
  return wal;
}

function labelOf(save: number): string {
  return `Save ${String(save).padStart(2, '0')}`;
}

function openedWith(bytesOfWal: Buffer): TestWorkbench {
  const folder = temporaryFolder();
  writeFileSync(`${layCatalogue(folder, good)}-wal`, bytesOfWal);
  return workbenchOn(folder);
}

async function savesIn({ value }: TestWorkbench): Promise<readonly string[]> {
  const labels = (await value('items.list', {})).map(({ label }) => label);
  return labels.filter((label) => label.startsWith('Save ')).sort();
}

/** Nothing is there that a later save took for granted: the first saves, as many as they are. */
async function expectFirstSaves(workbench: TestWorkbench): Promise<number> {
  const found = await savesIn(workbench);
  expect(found).toEqual(Array.from({ length: found.length }, (_each, n) => labelOf(n)));
  await expectWorks(workbench);
  return found.length;
}

describe('a catalogue that was not closed', () => {
  it('has every save of its WAL', async () => {
    expect(await expectFirstSaves(openedWith(unclosedWal()))).toBe(saves);
  });

  it(`has the saves before the place at which its WAL was cut: ${cases(6, 150)} places`, async () => {
    const [wal, dice] = [unclosedWal(), diceOf(seed)];
    for (let n = 0; n < cases(6, 150); n += 1) {
      const at = dice.count(wal.length);
      const found = await expectFirstSaves(openedWith(wal.subarray(0, at)));
      expect(found / saves).toBeCloseTo(at / wal.length, 1);
    }
  });

  it(`has the saves before the first flipped byte of its WAL: ${cases(6, 150)} places`, async () => {
    const [wal, dice] = [unclosedWal(), diceOf(seed + 1)];
    for (let n = 0; n < cases(6, 150); n += 1) {
      const bytes = Buffer.from(wal);
      const at = dice.count(wal.length);
      bytes[at]! ^= 1 + dice.count(255);
      await expectFirstSaves(openedWith(bytes));
    }
  });

  it.each([
    ['zeros', () => Buffer.alloc(20_000)],
    ['a text', () => Buffer.from('Packing list: tent, stove, mat. '.repeat(500))],
  ])('opens as its file has it where its WAL is %s', async (_words, made) => {
    expect(await expectFirstSaves(openedWith(made()))).toBe(0);
  });
});

/** What lies beside another catalogue, which has grown apart from `good`. */
function walOfAnother(): Buffer {
  const folder = temporaryFolder();
  const file = layCatalogue(folder, good);
  const grown = openCatalogue(file);
  for (let n = 0; n < saves; n += 1) saveItem(grown.write, { ...thing, notes: 'Kept. '.repeat(300) });
  grown.close();
  const { write, ...catalogue } = openCatalogue(file);
  for (let n = 0; n < saves; n += 1) saveItem(write, { ...thing, label: labelOf(n) });
  const wal = readFileSync(`${file}-wal`);
  catalogue.close();
  return wal;
}

it('names a catalogue beside which the WAL of another lies, and leaves both as they are', async () => {
  const [folder, otherFolder] = [temporaryFolder(), temporaryFolder()];
  layCatalogue(otherFolder, good);
  const file = layCatalogue(folder, good);
  writeFileSync(`${file}-wal`, walOfAnother());
  const before = fingerprint(file);
  const workbench = workbenchOn(folder);
  await expectTrouble(workbench, ['damaged']);
  await expectWaysOn(workbench, { damaged: file, otherFolder, thingsBackedUp: good.things });
  expect(fingerprint(file)).toEqual(before);
});
