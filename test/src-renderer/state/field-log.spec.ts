import { beforeEach, describe, expect, it } from 'vitest';
import type { Comparison } from '../../../shared-types/comparison.ts';
import type { ReadingDraft } from '../../../shared-types/reading.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { EditHistory } from '../../../src-renderer/state/edit-history.svelte.ts';
import { FieldLogState } from '../../../src-renderer/state/field-log.svelte.ts';
import { InventoryState } from '../../../src-renderer/state/inventory.svelte.ts';
import { marginChanges } from '../../../src-renderer/state/margin-changes.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { fakeComparison } from '../support/fake-comparison.ts';
import { fakeEstimate, fakeToday } from '../support/fake-readings.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

const draft: ReadingDraft = {
  ...{ as: 'charge', itemId: 'demo-bank-20', on: fakeToday, note: '' },
  state: { as: 'lights', lit: 3 },
};

describe('FieldLogState', () => {
  let workbench: FakeWorkbench;
  let notices: NoticesState;
  let history: EditHistory;
  let inventory: InventoryState;
  let log: FieldLogState;
  let comparison: { current: Comparison | null; updating: boolean };

  const compared = (): Comparison => {
    const { tours, scenarios, items, settings } = workbench.catalogue;
    return fakeComparison(tours[0]!, scenarios, items, settings);
  };
  const texts = (): string[] => notices.shown.map(({ text }) => text);

  beforeEach(async () => {
    workbench = new FakeWorkbench();
    notices = new NoticesState();
    history = new EditHistory(notices);
    const calls = new Calls(workbench.invoke, notices);
    inventory = new InventoryState(calls, () => undefined, history);
    comparison = { current: compared(), updating: false };
    log = new FieldLogState(calls, history, {
      items: () => inventory.rows.all,
      adoptItem: (item) => inventory.adopt(item),
      comparison: () => comparison,
    });
    await inventory.load();
    await log.load();
  });

  it('keeps the log as it was when a reading is refused', async () => {
    const outcome = await log.add({ ...draft, on: '2027-05-07' });
    expect(outcome.ok ? [] : outcome.error.fields).toMatchObject([{ path: 'reading.on' }]);
    expect([log.readings, history.nextUndo, log.lastItemId]).toEqual([[], null, null]);
  });

  it('adds a reading, takes it back and makes it again', async () => {
    await log.add(draft);
    expect([log.readings.length, log.hasToday, log.lastItemId]).toEqual([1, true, 'demo-bank-20']);
    await history.undo();
    expect(log.readings).toEqual([]);
    await history.redo();
    expect(log.readings).toMatchObject([draft]);
  });

  it('changes a reading, and takes that back', async () => {
    await log.add(draft);
    await log.save(log.readings[0]!.id, { ...draft, note: 'in the sun' });
    expect(log.readings).toMatchObject([{ note: 'in the sun' }]);
    await history.undo();
    expect(log.readings).toMatchObject([{ note: '' }]);
  });

  it('keeps a change that was refused in its form, and says that it is not stored', async () => {
    await log.add(draft);
    log.editedId = log.readings[0]!.id;
    const form = log.forms.of(log.edited!);
    form.set('on', '2027-05-07');
    expect(await form.submit()).toBe(false);
    expect([log.unsaved, log.forms.of(log.edited!).at('on'), log.readings[0]!.on]).toEqual([
      true,
      '2027-05-07',
      fakeToday,
    ]);
  });

  it('removes a reading with a notice that puts it back', async () => {
    await log.add(draft);
    const [reading] = log.readings;
    await log.remove(reading!);
    expect(log.readings).toEqual([]);
    const notice = notices.shown.find(({ text }) => text.startsWith('Removed a reading of'))!;
    notices.undo(notice.id);
    await expect.poll(() => log.readings).toEqual([reading]);
  });

  it('stores an estimate for its item, with a notice that takes it back', async () => {
    await log.store(fakeEstimate('demo-bank-20'));
    expect(inventory.rows.find('demo-bank-20')).toMatchObject({ measuredDeliverableWh: { value: 55 } });
    const notice = notices.shown.find(({ text }) => text.startsWith('Stored for'))!;
    notices.undo(notice.id);
    await expect
      .poll(() => inventory.rows.find('demo-bank-20'))
      .not.toMatchObject({ measuredDeliverableWh: { value: 55 } });
  });

  it('says what the next comparison made of it, once it is there, and once only', async () => {
    await log.store(fakeEstimate('demo-bank-20'));
    const news = (): string[] => texts().filter((text) => text.startsWith('The comparison used'));
    log.followComparison();
    comparison = { current: compared(), updating: true };
    log.followComparison();
    expect(news()).toEqual([]);
    comparison = { current: compared(), updating: false };
    log.followComparison();
    expect(news()).toHaveLength(1);
    expect(news()[0]).toContain('Energy margins:');
    expect(log.lastChange).toBe(news()[0]);
    notices.close(notices.shown.find(({ text }) => text === news()[0])!.id);
    comparison = { current: compared(), updating: false };
    log.followComparison();
    expect(news()).toEqual([]);
  });

  it('says nothing of a value that was taken back before a comparison used it', async () => {
    await log.store(fakeEstimate('demo-bank-20'));
    await history.undo();
    comparison = { current: compared(), updating: false };
    log.followComparison();
    expect([log.lastChange, texts().some((text) => text.startsWith('The comparison used'))]).toEqual([
      null,
      false,
    ]);
  });

  it('tells two values that were stored one after the other together', async () => {
    await log.store(fakeEstimate('demo-bank-20'));
    await log.store(fakeEstimate('demo-bank-10'));
    comparison = { current: compared(), updating: false };
    log.followComparison();
    const labels = ['demo-bank-20', 'demo-bank-10'].map((id) => inventory.rows.find(id)!.label);
    for (const label of labels) expect(log.lastChange).toContain(label);
  });
});

describe('marginChanges()', () => {
  const { catalogue } = new FakeWorkbench();
  const before = fakeComparison(
    catalogue.tours[0]!,
    catalogue.scenarios,
    catalogue.items,
    catalogue.settings,
  );

  it('names each scenario before and after, and those that stayed', () => {
    const [first, ...rest] = before.scenarios;
    const moved = {
      ...first!,
      margin: { ...first!.margin, value: first!.margin.value + 0.1, capped: false },
    };
    const text = marginChanges(before, { ...before, scenarios: [moved, ...rest] }, 'en-GB');
    expect(text).toContain(`${first!.label} `);
    expect(text).toContain(' before, ');
    expect(text).toContain(' as before');
  });

  it('compares no two tours', () => {
    const other = { ...before, tour: { ...before.tour, id: 'other' } };
    expect(marginChanges(before, other)).toBe('Another tour is compared now.');
  });
});
