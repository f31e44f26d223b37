import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { CsvReading } from '../../../shared-types/contract.ts';
import { success, type Outcome } from '../../../shared-types/outcome.ts';
import { CsvImportState } from '../../../src-renderer/state/csv-import.svelte.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { EditHistory } from '../../../src-renderer/state/edit-history.svelte.ts';
import { InventoryState } from '../../../src-renderer/state/inventory.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('CsvImportState', () => {
  let workbench: FakeWorkbench;
  let csv: CsvImportState;
  beforeEach(() => {
    workbench = new FakeWorkbench();
    const notices = new NoticesState();
    csv = new InventoryState(new Calls(workbench.invoke, notices), () => undefined, new EditHistory(notices))
      .csv;
  });

  async function read(text: string): Promise<void> {
    csv.text = text;
    await csv.read();
  }

  const labels = () => workbench.catalogue.items.map(({ label }) => label);

  it('adds nothing while a line is in error, and keeps the text for mending', async () => {
    await read('one\nbad');
    expect(csv.toAdd).toBe(0);
    await csv.add();
    expect([labels().includes('one'), csv.text]).toEqual([false, 'one\nbad']);
  });

  it('adds the good lines where the rider passes over the others', async () => {
    await read('one\nbad');
    csv.passOverErrors = true;
    expect(csv.toAdd).toBe(1);
    await csv.add();
    expect(labels()).toContain('one');
    expect([csv.opened, csv.text, csv.reading]).toEqual([false, '', null]);
  });

  it('leaves lines out, until the text changes', async () => {
    await read('one\ntwo\nthree');
    csv.leaveOut([1, 3], true);
    csv.leaveOut([3], false);
    expect([csv.toAdd, csv.addWords]).toEqual([2, 'Add 2 items']);
    await csv.add();
    expect([labels().includes('one'), labels().includes('three')]).toEqual([false, true]);
    await read('four');
    expect(csv.toAdd).toBe(1);
  });

  it('adds nothing of a text that was not read yet, and reads it once the typing pauses', async () => {
    vi.useFakeTimers();
    await read('one');
    csv.write('one\ntw');
    csv.write('one\ntwo');
    expect([csv.outdated, csv.toAdd]).toEqual([true, 0]);
    await vi.advanceTimersByTimeAsync(1000);
    vi.useRealTimers();
    expect([csv.outdated, csv.toAdd, workbench.count('items.readCsv')]).toEqual([false, 2, 2]);
  });

  it('shows the reading of the newest text, whichever comes first', async () => {
    const answers: ((reading: Outcome<CsvReading>) => void)[] = [];
    const slow = new CsvImportState({
      readCsv: () => new Promise((resolve) => answers.push(resolve)),
      addCsv: () => Promise.resolve(success({ added: [], problems: [] })),
    });
    const problem = (message: string) => success({ lines: [], problems: [{ line: 1, column: '', message }] });
    slow.text = 'older';
    const older = slow.read();
    slow.text = 'newer';
    const newer = slow.read();
    answers[1]!(problem('newer'));
    answers[0]!(problem('older'));
    await Promise.all([older, newer]);
    expect(slow.reading?.problems).toMatchObject([{ message: 'newer' }]);
  });
});
