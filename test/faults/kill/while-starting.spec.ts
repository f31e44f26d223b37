import { cpSync, existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { setImmediate as nextTurn, setTimeout as wait } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { readContent, type CatalogueContent } from '../../../src-main/catalogue/exchange/content.ts';
import { usualCatalogue } from '../../../src-main/catalogue/in-use.ts';
import { openCatalogue } from '../../../src-main/catalogue/open.ts';
import { openedDemo, temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { cases } from '../../support/full-run.ts';
import { openedHost, startHost } from '../built-host.ts';
import { diceOf, type Dice } from '../dice.ts';
import { backupNames, halfMadeFiles, inCopy, unsoundBackups, unsoundParts } from '../sound-file.ts';
import { layOlder } from '../older-folder.ts';

interface Moment {
  readonly words: string;
  /** What of the data folder shows that it has come. */
  hasCome(dataFolder: string): boolean;
  /** How long it lasts, about. */
  readonly ms: number;
}

const moments: readonly Moment[] = [
  {
    words: 'copying it',
    hasCome: (folder) => halfMadeFiles(folder).length > 0,
    ms: 8,
  },
  {
    words: 'bringing it up',
    hasCome: (folder) => existsSync(join(folder, `${usualCatalogue}-wal`)),
    ms: 60,
  },
  {
    words: 'judging it',
    hasCome: (folder) => existsSync(join(folder, 'in-use.lock')),
    ms: 20,
  },
];
const steps = [40, 70, 100];
const killsEach = cases(2, 14);
const seed = 20_270_504;

async function killAt(moment: Moment, dataFolder: string, dice: Dice): Promise<void> {
  const host = startHost(dataFolder);
  const over = new AbortController();
  const end = (): void => over.abort();
  host.opened.then(end, end);
  while (!over.signal.aborted && !moment.hasCome(dataFolder)) await nextTurn();
  await wait(dice.below(moment.ms));
  await host.kill();
}

function stepOf(file: string): unknown {
  return inCopy(file, (db) => db.pragma('user_version', { simple: true }));
}

function contentOf(file: string): CatalogueContent {
  const catalogue = openCatalogue(file);
  try {
    return readContent(catalogue.read);
  } finally {
    catalogue.close();
  }
}

/** What an undisturbed first start makes. */
function demoContent(): CatalogueContent {
  const { read } = openedDemo();
  return readContent(read);
}

/** The folder as an earlier version left it, and all that it must hold once it was brought up. */
function olderAt(step: number): { readonly folder: string; readonly content: CatalogueContent } {
  const folder = temporaryFolder();
  layOlder(folder, step);
  const untouched = temporaryFolder();
  cpSync(folder, untouched, { recursive: true });
  return { folder, content: contentOf(join(untouched, usualCatalogue)) };
}

it.each(moments)(`starts anew on an older catalogue after kills while $words`, async (moment) => {
  const dice = diceOf(seed);
  const found = { older: 0, broughtUp: 0, halfMade: 0 };
  for (let kill = 0; kill < killsEach; kill += 1) {
    const step = steps[kill % steps.length]!;
    const older = olderAt(step);
    const file = join(older.folder, usualCatalogue);
    await killAt(moment, older.folder, dice);
    expect([unsoundParts(file), unsoundBackups(older.folder)]).toEqual([[], []]);
    found[stepOf(file) === step ? 'older' : 'broughtUp'] += 1;
    if (halfMadeFiles(older.folder).length > 0) found.halfMade += 1;
    const host = await openedHost(older.folder);
    expect(await host.value('catalogue.state', {})).toMatchObject({ trouble: null });
    await host.stop();
    expect(contentOf(file)).toEqual(older.content);
    expect(backupNames(older.folder)).toContainEqual(expect.stringMatching(`-step-${step}.sqlite3$`));
    expect([unsoundBackups(older.folder), halfMadeFiles(older.folder)]).toEqual([[], []]);
    expect(readdirSync(older.folder).filter((name) => name.startsWith(`${usualCatalogue}-`))).toEqual([]);
  }
  console.log(
    `${killsEach} kills while ${moment.words}: ${found.older} found older, ${found.broughtUp} brought up, ` +
      `${found.halfMade} with a half-made copy; none lost.`,
  );
});

it('begins with the whole demo after kills while a first start makes the catalogue', async () => {
  const dice = diceOf(seed);
  const making = { words: '', hasCome: (folder: string) => existsSync(join(folder, usualCatalogue)), ms: 80 };
  for (let kill = 0; kill < killsEach; kill += 1) {
    const folder = temporaryFolder();
    await killAt(making, folder, dice);
    const host = await openedHost(folder);
    expect(await host.value('items.list', {})).toHaveLength(demoItems.length);
    await host.stop();
    expect(contentOf(join(folder, usualCatalogue))).toEqual(demoContent());
  }
});
