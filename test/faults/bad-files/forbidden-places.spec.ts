import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import type { StorageFault } from '../../../shared-types/catalogue-file.ts';
import { temporaryFolder } from '../../src-main/catalogue/temporary-catalogue.ts';
import { workbenchOn } from '../../support/open-workbench.ts';
import { boundByPermissions, whyNotBound } from '../bound-by-permissions.ts';
import { openedHost, type BuiltHost } from '../built-host.ts';
import { fingerprint } from '../fingerprint.ts';
import { goodCatalogue, layCatalogue, type GoodCatalogue } from '../good-catalogue.ts';
import { expectReadsAndSaves, expectTrouble, expectWorks } from '../ways-on.ts';

let good: GoodCatalogue;
beforeAll(() => {
  good = goodCatalogue();
});

/** Sets the permissions of a path until the test ends. */
function permit(path: string, mode: number): void {
  chmodSync(path, mode);
  onTestFinished(() => chmodSync(path, 0o755));
}

function boundHost(dataFolder: string): Promise<BuiltHost> {
  return openedHost(dataFolder, { through: boundByPermissions ?? [] });
}

interface Forbidden {
  readonly words: string;
  readonly forbid: (file: string) => void;
  readonly faults: readonly StorageFault[];
}

const forbidden: readonly Forbidden[] = [
  { words: 'whose file may only be read', forbid: (file) => permit(file, 0o444), faults: ['read-only'] },
  {
    words: 'whose folder may only be read',
    forbid: (file) => permit(dirname(file), 0o555),
    faults: ['read-only'],
  },
  {
    words: 'whose file may not be read',
    forbid: (file) => permit(file, 0o000),
    faults: ['unreachable', 'read-only'],
  },
  {
    words: 'whose folder may not be entered',
    forbid: (file) => permit(dirname(file), 0o000),
    faults: ['unreachable', 'read-only'],
  },
];

describe.skipIf(boundByPermissions === null)(`a catalogue${whyNotBound}`, () => {
  it.each(forbidden)('$words is named and left as it is; another can be used', async ({ forbid, faults }) => {
    const [folder, other] = [join(temporaryFolder(), 'data'), temporaryFolder()];
    mkdirSync(folder);
    layCatalogue(other, good);
    const file = layCatalogue(folder, good);
    const before = fingerprint(file);
    forbid(file);
    const host = await boundHost(folder);
    await expectTrouble(host, faults);
    expect(await host.call('catalogue.openOther', { path: other })).toMatchObject({ ok: true });
    await expectReadsAndSaves(host);
    chmodSync(folder, 0o755);
    chmodSync(file, 0o644);
    expect(fingerprint(file)).toEqual(before);
  });

  it('says that the choice of another lasts until the end where no note of it can be written', async () => {
    const [folder, other] = [temporaryFolder(), temporaryFolder()];
    layCatalogue(other, good);
    layCatalogue(folder, good);
    permit(folder, 0o555);
    const host = await boundHost(folder);
    await host.value('catalogue.openOther', { path: other });
    const { notKept } = await host.value('catalogue.state', {});
    expect(notKept).toContain(folder);
  });

  it('says why none can be put beside one whose folder may only be read', async () => {
    const folder = temporaryFolder();
    layCatalogue(folder, good);
    permit(folder, 0o555);
    const host = await boundHost(folder);
    const refusal = {
      ok: false,
      error: { code: 'storage', message: expect.stringContaining(folder) as string },
    };
    expect(await host.call('catalogue.restore', { name: null })).toMatchObject(refusal);
    expect(await host.call('catalogue.startEmpty', {})).toMatchObject(refusal);
  });

  it('goes on once the permissions are mended', async () => {
    const folder = temporaryFolder();
    const file = layCatalogue(folder, good);
    permit(file, 0o000);
    const host = await boundHost(folder);
    await expectTrouble(host, ['unreachable', 'read-only']);
    chmodSync(file, 0o644);
    await host.value('catalogue.tryAgain', {});
    await expectWorks(host);
    expect(await host.value('items.list', {})).toHaveLength(good.things + 1);
  });

  it('opens with a fault where its data folder can not be made', async () => {
    const parent = temporaryFolder();
    permit(parent, 0o555);
    await expectTrouble(await boundHost(join(parent, 'data')), ['read-only', 'unreachable']);
  });
});

it('opens with a fault where a file has the place of its data folder', async () => {
  const folder = join(temporaryFolder(), 'data');
  writeFileSync(folder, 'Packing list');
  const [workbench, other] = [workbenchOn(folder), temporaryFolder()];
  await expectTrouble(workbench, ['unreachable']);
  layCatalogue(other, good);
  expect(await workbench.call('catalogue.openOther', { path: other })).toMatchObject({ ok: true });
  await expectReadsAndSaves(workbench);
  expect(readFileSync(folder, 'utf8')).toBe('Packing list');
  expect(workbench.faults).toEqual([]);
});
