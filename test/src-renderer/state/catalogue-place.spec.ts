import { beforeEach, describe, expect, it } from 'vitest';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { acts, CataloguePlaceState } from '../../../src-renderer/state/catalogue-place.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { brokenBackup, catalogueBeside, soundBackup } from '../support/fake-place.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('CataloguePlaceState', () => {
  let workbench: FakeWorkbench;
  let notices: NoticesState;
  let place: CataloguePlaceState;
  let reloads: number;
  let stored: Promise<void>;
  beforeEach(async () => {
    workbench = new FakeWorkbench();
    notices = new NoticesState();
    reloads = 0;
    stored = Promise.resolve();
    place = new CataloguePlaceState(new Calls(workbench.invoke, notices), {
      reload: () => (reloads += 1),
      settled: () => stored,
    });
    workbench.place.fail('damaged');
    await place.ask();
  });

  const asked = (name: string): unknown => workbench.calls.find((call) => call.name === name)?.input;

  it.each([
    ['restoring the newest', acts.restoreNewest, () => place.restore(null)],
    ['restoring one', acts.restore(soundBackup.name), () => place.restore(soundBackup.name)],
    ['starting empty', acts.startEmpty, () => place.startEmpty()],
    ['opening one beside it', acts.open(catalogueBeside.path), () => place.open(catalogueBeside.path)],
    ['opening another', acts.openOther, () => place.openOther('/elsewhere')],
    ['a backup', acts.backUp, () => place.backUp()],
  ])('says beside its button why %s was refused, and stays where it is', async (_, act, run) => {
    workbench.place.refusal = 'The disk is full.';
    await run();
    expect([place.refusedAt(act), place.refusedAt(acts.tryAgain)]).toEqual(['The disk is full.', null]);
    expect([reloads, place.trouble?.fault, place.busy, notices.shown]).toEqual([0, 'damaged', null, []]);
  });

  it('says what is allowed for a path', async () => {
    await place.openOther('somewhere');
    expect(place.refusedAt(acts.openOther)).toBe('Allowed: a path from the root on.');
  });

  it('takes the refusal away with the next act', async () => {
    await place.openOther('somewhere');
    await place.tryAgain();
    expect(place.refusedAt(acts.openOther)).toBeNull();
  });

  it('says so where trying again did not help, and shows what is wrong by now', async () => {
    workbench.place.fail('locked');
    await place.tryAgain();
    expect([reloads, place.trouble?.fault]).toEqual([0, 'locked']);
    expect(place.refusedAt(acts.tryAgain)).toBe('Tried again: it is not open yet.');
  });

  it('loads the page anew once trying again helped', async () => {
    workbench.place.state = { ...workbench.place.state, trouble: null };
    await place.tryAgain();
    expect([reloads, place.replaced]).toEqual([1, true]);
  });

  it.each([
    ['the newest backup', () => place.restore(null), 'catalogue.restore', { name: null }],
    ['a new one', () => place.startEmpty(), 'catalogue.startEmpty', {}],
    ['another', () => place.openOther('/elsewhere'), 'catalogue.openOther', { path: '/elsewhere' }],
  ])('loads the page anew on %s', async (_, run, call, input) => {
    await run();
    expect([asked(call), reloads, place.replaced]).toEqual([input, 1, true]);
  });

  it('asks for the path where the host has no dialog', async () => {
    await place.openOther(null);
    expect([place.asksPath, reloads]).toEqual([true, 0]);
  });

  it('waits until all that was on its way is stored in the catalogue it leaves', async () => {
    let finish = (): void => undefined;
    stored = new Promise((done) => (finish = done));
    const restoring = place.restore(null);
    await Promise.resolve();
    expect([place.busy, asked('catalogue.restore')]).toEqual([acts.restoreNewest, undefined]);
    finish();
    await restoring;
    expect([asked('catalogue.restore'), reloads]).toEqual([{ name: null }, 1]);
  });

  it('does one thing at a time', async () => {
    await Promise.all([place.restore(null), place.startEmpty()]);
    expect([asked('catalogue.startEmpty'), reloads]).toEqual([undefined, 1]);
  });

  it('lets the rider ask for anything while it looks for backups', async () => {
    workbench.hold('catalogue.choices');
    const looking = place.look();
    await place.restore(null);
    expect(reloads).toBe(1);
    workbench.release(0);
    await looking;
    expect(place.lookFault).toBeNull();
  });

  it('finds what could take the place, and the new backup among it', async () => {
    await place.look();
    expect(place.choices?.backups).toEqual([brokenBackup, soundBackup]);
    await place.backUp();
    expect(notices.shown.map(({ text }) => text)).toEqual([`Made a backup: ${soundBackup.name}.`]);
    expect(workbench.count('catalogue.choices')).toBe(2);
  });
});
