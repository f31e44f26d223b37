import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { inUseNote, usualCatalogue } from '../../../../src-main/catalogue/in-use.ts';
import { demoItems } from '../../../../db/demo/demo.ts';
import { openedWorkbench, workbenchOn, type TestWorkbench } from '../../../support/open-workbench.ts';

function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'chargewright-place-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A folder whose catalogue is a text, with what it says. */
function brokenFolder() {
  const folder = temporaryFolder();
  const file = join(folder, usualCatalogue);
  const text = 'Packing list: tent, stove, mat. '.repeat(200);
  writeFileSync(file, text);
  return { folder, file, stays: () => readFileSync(file, 'utf8') === text };
}

async function labelsOf({ value }: TestWorkbench): Promise<readonly string[]> {
  return (await value('items.list', {})).map(({ label }) => label);
}

const anItem = demoItems[0]!;

async function addItem({ value }: TestWorkbench, label: string): Promise<void> {
  const { id: _, ...item } = anItem;
  await value('items.save', { item: { ...item, label } });
}

describe('a catalogue that can not be opened', () => {
  it('is told as what it is, and every call about its content refuses', async () => {
    const { folder, file, stays } = brokenFolder();
    const { call, value } = workbenchOn(folder);
    expect(await value('catalogue.state', {})).toEqual({
      file,
      trouble: { fault: 'not-a-catalogue', message: expect.stringContaining(file) as unknown },
      notKept: null,
      backupFault: null,
    });
    for (const name of ['items.list', 'tours.list', 'settings.get', 'exchange.save', 'readings.log'] as const)
      expect(await call(name, {})).toMatchObject({ ok: false, error: { code: 'storage' } });
    expect(await call('catalogue.backUp', {})).toMatchObject({ ok: false, error: { code: 'storage' } });
    expect(await value('about', {})).toMatchObject({ dataFolder: folder });
    expect((await value('diagnostics.get', {})).catalogue).toMatchObject({ file, step: null });
    expect(stays()).toBe(true);
  });

  it('stays in trouble while nothing has changed, and opens once it was put right', async () => {
    const { folder, file } = brokenFolder();
    const { value } = workbenchOn(folder);
    expect((await value('catalogue.tryAgain', {})).trouble?.fault).toBe('not-a-catalogue');
    rmSync(file);
    expect((await value('catalogue.tryAgain', {})).trouble).toBe(null);
    expect(await value('items.list', {})).toHaveLength(demoItems.length);
  });

  it('has no backup to restore where there is none, and says where it looked', async () => {
    const { folder, stays } = brokenFolder();
    const { call } = workbenchOn(folder);
    expect(await call('catalogue.restore', { name: null })).toMatchObject({
      ok: false,
      error: { code: 'not-found', message: expect.stringContaining(join(folder, 'backups')) as unknown },
    });
    expect(stays()).toBe(true);
  });

  it('lets an empty one be started beside it, for the next start too', async () => {
    const { folder, stays } = brokenFolder();
    const first = workbenchOn(folder);
    const state = await first.value('catalogue.startEmpty', {});
    expect(state).toMatchObject({ file: join(folder, 'catalogue-2.sqlite3'), trouble: null });
    await addItem(first, 'Own lamp');
    first.close();
    expect(await labelsOf(workbenchOn(folder))).toContain('Own lamp');
    expect(stays()).toBe(true);
  });

  it('is refused, not replaced by another, where the note of it is broken or its disk is gone', async () => {
    const folder = temporaryFolder();
    openAndClose(folder);
    for (const [text, fault] of [
      ['{', 'unreachable'],
      [JSON.stringify({ file: join(folder, 'gone', 'catalogue.sqlite3') }), 'missing'],
    ] as const) {
      writeFileSync(join(folder, inUseNote), text);
      const workbench = workbenchOn(folder);
      expect((await workbench.value('catalogue.state', {})).trouble?.fault).toBe(fault);
      workbench.close();
    }
    expect(existsSync(join(folder, 'gone'))).toBe(false);
  });
});

describe('a note of the catalogue in use that can not be read', () => {
  it('leaves every catalogue to choose, the usual one too, and is written anew', async () => {
    const folder = temporaryFolder();
    const first = workbenchOn(folder);
    await addItem(first, 'Of the usual one');
    first.close();
    writeFileSync(join(folder, inUseNote), '{');
    const workbench = workbenchOn(folder);
    const { beside } = await workbench.value('catalogue.choices', {});
    expect(beside).toMatchObject([{ path: join(folder, usualCatalogue), unfit: null }]);
    await workbench.value('catalogue.openOther', { path: beside[0]!.path });
    expect(await labelsOf(workbench)).toContain('Of the usual one');
    workbench.close();
    expect((await workbenchOn(folder).value('catalogue.state', {})).trouble).toBe(null);
  });
});

function openAndClose(folder: string): void {
  workbenchOn(folder).close();
}

describe('restoring a backup', () => {
  it.each(['../catalogue.sqlite3', '..', '', 'a/b', 'a\\b'])('takes no path for a name: %j', async (name) => {
    const { call } = openedWorkbench();
    const outcome = await call('catalogue.restore', { name });
    expect(outcome).toMatchObject({ ok: false });
    if (!outcome.ok) expect(['bad-input', 'not-found']).toContain(outcome.error.code);
  });

  it('brings back what was there, and leaves what came later to be opened again', async () => {
    const workbench = openedWorkbench();
    const { value, folder } = workbench;
    await addItem(workbench, 'Before');
    const { name, holds } = await value('catalogue.backUp', {});
    expect(holds).toMatchObject({ items: demoItems.length + 1 });
    await addItem(workbench, 'After');
    await value('catalogue.restore', { name });
    expect(await labelsOf(workbench)).toEqual(expect.arrayContaining(['Before']));
    expect(await labelsOf(workbench)).not.toContain('After');
    const { beside } = await value('catalogue.choices', {});
    expect(beside).toMatchObject([
      { path: join(folder, usualCatalogue), holds: { items: demoItems.length + 2 } },
    ]);
    await value('catalogue.openOther', { path: beside[0]!.path });
    expect(await labelsOf(workbench)).toContain('After');
  });

  it('takes the newest that is sound', async () => {
    const workbench = openedWorkbench();
    const { value, folder } = workbench;
    await addItem(workbench, 'Kept');
    const first = await value('catalogue.backUp', {});
    await new Promise((later) => setTimeout(later, 5));
    const second = await value('catalogue.backUp', {});
    expect(second.name > first.name).toBe(true);
    writeFileSync(join(folder, 'backups', second.name), 'cut off');
    await value('catalogue.restore', { name: null });
    expect(await labelsOf(workbench)).toContain('Kept');
  });

  it('ends what is walked on the former catalogue', async () => {
    const workbench = openedWorkbench({});
    const { call, value } = workbench;
    await value('catalogue.backUp', {});
    const run = call('comparison.run', { runId: 'long', tourId: 'demo-tour', scenarioIds: null });
    expect((await call('catalogue.restore', { name: null })).ok).toBe(true);
    const outcome = await run;
    if (!outcome.ok) expect(outcome.error.code).toBe('cancelled');
    expect(workbench.faults).toEqual([]);
  });
});

describe('opening another catalogue', () => {
  it.each([
    ['catalogue.sqlite3', 'bad-input'],
    ['/nowhere/at/all', 'not-found'],
    ['/dev/null', 'bad-input'],
    ['/nowhere\0', 'bad-input'],
    [`/${'x'.repeat(300)}`, 'storage'],
  ])('refuses %s', async (path, code) => {
    const { call } = openedWorkbench();
    expect(await call('catalogue.openOther', { path })).toMatchObject({ ok: false, error: { code } });
    expect((await call('items.list', {})).ok).toBe(true);
  });

  it('refuses a file of another kind and goes on with the one in use', async () => {
    const { file, stays } = brokenFolder();
    const { call, value } = openedWorkbench();
    const before = await value('catalogue.state', {});
    expect(await call('catalogue.openOther', { path: file })).toMatchObject({
      ok: false,
      error: { code: 'storage', message: expect.stringContaining('not a Chargewright catalogue') as unknown },
    });
    expect(await value('catalogue.state', {})).toEqual(before);
    expect(stays()).toBe(true);
  });

  it('refuses a backup, which is to stay as it is', async () => {
    const { call, value, folder } = openedWorkbench();
    const { name } = await value('catalogue.backUp', {});
    const path = join(folder, 'backups', name);
    const before = readFileSync(path);
    expect(await call('catalogue.openOther', { path })).toMatchObject({
      ok: false,
      error: { code: 'in-use' },
    });
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  it('takes a backup that was copied to another folder', async () => {
    const workbench = openedWorkbench();
    await addItem(workbench, 'Backed up');
    const { name } = await workbench.value('catalogue.backUp', {});
    const copy = join(temporaryFolder(), name);
    copyFileSync(join(workbench.folder, 'backups', name), copy);
    const elsewhere = openedWorkbench();
    await elsewhere.value('catalogue.openOther', { path: copy });
    expect(await labelsOf(elsewhere)).toContain('Backed up');
  });

  it('takes the one in a folder, or makes one there', async () => {
    const other = openedWorkbench();
    await addItem(other, 'Of the other');
    const workbench = openedWorkbench();
    const opened = await workbench.value('catalogue.openOther', { path: ` ${other.folder} ` });
    expect(opened).toMatchObject({ as: 'opened', state: { file: join(other.folder, usualCatalogue) } });
    expect(await labelsOf(workbench)).toContain('Of the other');
    const bare = join(workbench.folder, 'bare');
    mkdirSync(bare);
    await workbench.value('catalogue.openOther', { path: bare });
    expect(await labelsOf(workbench)).toHaveLength(demoItems.length);
    expect(existsSync(join(bare, usualCatalogue))).toBe(true);
  });

  it('asks by the dialog of the host, or tells the page to ask', async () => {
    const other = openedWorkbench();
    const chosen = openedWorkbench({
      chooseFolder: () => Promise.resolve({ as: 'chosen', path: other.folder }),
    });
    expect(await chosen.value('catalogue.openOther', { path: null })).toMatchObject({ as: 'opened' });
    const asking = openedWorkbench({ chooseFolder: () => Promise.resolve({ as: 'ask-page' }) });
    expect(await asking.value('catalogue.openOther', { path: null })).toEqual({ as: 'ask-page' });
  });

  it('says that the choice is forgotten where it can not be written down', async () => {
    const { value, folder } = openedWorkbench();
    mkdirSync(join(folder, `${inUseNote}.part`));
    const state = await value('catalogue.startEmpty', {});
    expect(state).toMatchObject({ trouble: null, notKept: expect.stringContaining(folder) as unknown });
  });
});
