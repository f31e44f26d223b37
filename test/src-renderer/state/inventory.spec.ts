import { beforeEach, describe, expect, it } from 'vitest';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';
import { InventoryState } from '../../../src-renderer/state/inventory.svelte.ts';
import { EditHistory } from '../../../src-renderer/state/edit-history.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

const phone = 'demo-phone';
const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('InventoryState', () => {
  let workbench: FakeWorkbench;
  let notices: NoticesState;
  let inventory: InventoryState;
  let changes: number;
  beforeEach(async () => {
    workbench = new FakeWorkbench();
    notices = new NoticesState();
    changes = 0;
    inventory = new InventoryState(
      new Calls(workbench.invoke, notices),
      () => changes++,
      new EditHistory(notices),
    );
    await inventory.load();
  });

  const draft = () => draftOf(inventory.rows.find(phone)!);
  const stored = (id: string) => workbench.catalogue.items.find((item) => item.id === id);

  it('keeps the stored item when a save is refused', async () => {
    const outcome = await inventory.save(phone, { ...draft(), massG: -1 });
    expect(outcome.ok ? [] : outcome.error.fields).toMatchObject([{ path: 'item.massG' }]);
    expect(inventory.rows.find(phone)?.massG).toBe(190);
    expect(changes).toBe(0);
  });

  it('adds nothing when the new item is refused', async () => {
    const before = inventory.rows.all.length;
    await inventory.add({ ...draft(), label: '  ' });
    expect([inventory.rows.all.length, changes]).toEqual([before, 0]);
  });

  it('shows the newest save even when its answer came first', async () => {
    workbench.hold('items.save');
    const older = inventory.save(phone, { ...draft(), massG: 1 });
    const newer = inventory.save(phone, { ...draft(), massG: 2 });
    await settle();
    workbench.release(1);
    await newer;
    workbench.release(0);
    await older;
    expect(inventory.rows.find(phone)?.massG).toBe(2);
  });

  it('keeps an older save when the newer one is refused', async () => {
    const good = inventory.save(phone, { ...draft(), massG: 210 });
    const bad = inventory.save(phone, { ...draft(), massG: -1 });
    await Promise.all([good, bad]);
    expect(inventory.rows.find(phone)?.massG).toBe(210);
  });

  it('asks for a new comparison after each save', async () => {
    await inventory.save(phone, { ...draft(), massG: 200 });
    expect([inventory.rows.find(phone)?.massG, changes]).toEqual([200, 1]);
  });

  it('retires with an undo that gives the former state back', async () => {
    await inventory.move(phone, 'retired');
    expect(stored(phone)?.state).toBe('retired');
    expect(notices.shown).toMatchObject([{ text: 'Retired Phone.' }]);
    notices.undo(notices.shown[0]!.id);
    await settle();
    expect(stored(phone)?.state).toBe('owned');
    expect(inventory.rows.find(phone)?.state).toBe('owned');
    expect(changes).toBe(2);
  });

  it('never moves an item back by saving an older form', async () => {
    const openedBefore = draft();
    await inventory.move(phone, 'retired');
    await inventory.save(phone, { ...openedBefore, massG: 200 });
    expect(stored(phone)).toMatchObject({ state: 'retired', massG: 200 });
  });

  it('stores nothing of a file that is only looked at', async () => {
    const outcome = await inventory.readCsv('one\ntwo');
    expect(outcome.ok && outcome.value.lines.length).toBe(2);
    expect(changes).toBe(0);
    expect(workbench.catalogue.items).toHaveLength(inventory.rows.all.length);
  });

  const everyLine = { leaveOut: [], passOverErrors: false };

  it('adds nothing of a file with a line in error', async () => {
    const before = inventory.rows.all.length;
    await inventory.addCsv({ text: 'one\nbad', ...everyLine });
    expect([inventory.rows.all.length, changes]).toEqual([before, 0]);
  });

  it('adds all items of a good file', async () => {
    const before = inventory.rows.all.length;
    await inventory.addCsv({ text: 'one\ntwo', ...everyLine });
    expect([inventory.rows.all.length, changes]).toEqual([before + 2, 1]);
    expect(notices.shown).toMatchObject([{ text: 'Added 2 items from the file.' }]);
  });

  it('changes nothing when all of several are in that state already', async () => {
    await inventory.moveAll(new Set([phone]), 'owned');
    expect([notices.shown, changes]).toEqual([[], 0]);
  });

  it('moves several with one notice, and takes all of them back to where each was', async () => {
    const panel = inventory.rows.all.find(({ state }) => state === 'considering')!.id;
    await inventory.moveAll(new Set([phone, panel]), 'retired');
    expect([stored(phone)?.state, stored(panel)?.state, changes]).toEqual(['retired', 'retired', 1]);
    expect(notices.shown).toMatchObject([{ text: 'Retired 2 items.' }]);
    notices.undo(notices.shown[0]!.id);
    await settle();
    expect([stored(phone)?.state, stored(panel)?.state]).toEqual(['owned', 'considering']);
    expect(inventory.rows.find(panel)?.state).toBe('considering');
  });

  it('sorts by another column upwards, and by the same one the other way', () => {
    inventory.sortBy('massG');
    expect(inventory.sort).toEqual({ by: 'massG', direction: 'ascending' });
    inventory.sortBy('massG');
    expect(inventory.sort.direction).toBe('descending');
    inventory.sortBy('label');
    expect(inventory.sort).toEqual({ by: 'label', direction: 'ascending' });
  });

  it('tells where a CSV was saved', async () => {
    await inventory.saveCsv([phone]);
    await inventory.saveCsvTemplate();
    expect(notices.shown.map(({ text }) => text)).toEqual([
      'Saved as a folder/inventory.csv.',
      'Saved as a folder/inventory-template.csv.',
    ]);
  });
});
