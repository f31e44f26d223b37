import { writeFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import type { StorageFault } from '../../../shared-types/catalogue-file.ts';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { cases } from '../../support/full-run.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { diceOf, type Dice } from '../dice.ts';
import { fingerprint } from '../fingerprint.ts';
import { goodCatalogue, layCatalogue, type GoodCatalogue } from '../good-catalogue.ts';
import { expectTrouble, expectWaysOn, readingAnswers } from '../ways-on.ts';

const files = cases(15, 500);
const mostFlips = 100;
const seed = 20_270_505;
const allowed: readonly StorageFault[] = ['damaged', 'not-a-catalogue', 'newer', 'not-brought-up'];

let good: GoodCatalogue;
beforeAll(() => {
  good = goodCatalogue();
});

interface Flip {
  readonly at: number;
  readonly to: number;
}

/** The header of the file (sqlite.org/fileformat.html#the_database_header). */
const headerBytes = 100;
const sqlBytes = 2000;

/** A place anywhere, in the header, or in the SQL of a table, of which chance alone would hit few. */
function somePlace(bytes: Buffer, dice: Dice): number {
  const sqlAt = bytes.indexOf('CREATE TABLE', dice.count(bytes.length / 2));
  return dice.oneOf([
    dice.count(bytes.length),
    dice.count(bytes.length),
    dice.count(headerBytes),
    Math.max(0, sqlAt) + dice.count(sqlBytes),
  ]);
}

/** One in every other file, and up to a hundred in the others. */
function someFlips(bytes: Buffer, dice: Dice): readonly Flip[] {
  const count = dice.oneOf([1, 1 + dice.count(mostFlips)]);
  return Array.from({ length: count }, () => {
    const at = somePlace(bytes, dice);
    return { at, to: bytes[at]! ^ (1 + dice.count(255)) };
  });
}

function flipped(bytes: Buffer, flips: readonly Flip[]): Buffer {
  const copy = Buffer.from(bytes);
  for (const { at, to } of flips) copy[at] = to;
  return copy;
}

/** How the workbench takes these bytes for a catalogue; throws where it fails at it. */
async function taken(bytes: Buffer): Promise<StorageFault | 'opened' | 'opened in part'> {
  const [folder, otherFolder] = [temporaryFolder(), temporaryFolder()];
  layCatalogue(otherFolder, good);
  const file = layCatalogue(folder, good);
  writeFileSync(file, bytes);
  const before = fingerprint(file);
  const workbench = workbenchOn(folder);
  try {
    const { trouble } = await workbench.value('catalogue.state', {});
    if (trouble !== null) await expectTrouble(workbench, allowed);
    const answers = Object.values(await readingAnswers(workbench));
    expect(workbench.faults).toEqual([]);
    await expectWaysOn(workbench, { damaged: null, otherFolder, thingsBackedUp: good.things });
    expect(fingerprint(file)).toEqual(before);
    return trouble?.fault ?? (answers.every((answer) => answer === 'ok') ? 'opened' : 'opened in part');
  } finally {
    workbench.close();
  }
}

it(`breaks at no catalogue with flipped bytes: ${files} files`, async () => {
  const dice = diceOf(seed);
  const answers: Record<string, number> = {};
  const broken: unknown[] = [];
  for (let n = 0; n < files; n += 1) {
    const flips = someFlips(good.bytes, dice);
    const answer = await taken(flipped(good.bytes, flips)).catch((thrown: unknown) => {
      broken.push({ flips, thrown: String(thrown) });
      return 'broke';
    });
    answers[answer] = (answers[answer] ?? 0) + 1;
  }
  console.log(`${files} files with flipped bytes: ${JSON.stringify(answers)}`);
  expect(broken).toEqual([]);
});
