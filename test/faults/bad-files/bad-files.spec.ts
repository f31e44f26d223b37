import { lstatSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { fingerprint } from '../fingerprint.ts';
import { goodCatalogue, layCatalogue, type GoodCatalogue } from '../good-catalogue.ts';
import { expectTrouble, expectWaysOn } from '../ways-on.ts';
import { fileDamages, noteDamages, type Damage } from './damages.ts';

let good: GoodCatalogue;
beforeAll(() => {
  good = goodCatalogue();
});

async function expectBearable({ befall, fault }: Damage, asksForFile: boolean): Promise<void> {
  const [folder, otherFolder] = [temporaryFolder(), temporaryFolder()];
  layCatalogue(otherFolder, good);
  const file = layCatalogue(folder, good);
  befall(file, good.bytes);
  const before = fingerprint(file);
  const workbench = workbenchOn(folder);
  const trouble = await expectTrouble(workbench, [fault].flat());
  expect(await workbench.value('catalogue.tryAgain', {})).toMatchObject({ trouble });
  const damaged = asksForFile && lstatSync(file).isFile() ? file : null;
  await expectWaysOn(workbench, { damaged, otherFolder, thingsBackedUp: good.things });
  expect(fingerprint(file)).toEqual(before);
  expect(workbench.faults).toEqual([]);
}

describe('a catalogue that can not be opened is named, left as it is, and has every way on:', () => {
  it.each(fileDamages)('one $words', (damage) => expectBearable(damage, true));

  it.each(noteDamages)('one $words', (damage) => expectBearable(damage, false));
});
