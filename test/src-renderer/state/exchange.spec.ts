import { beforeEach, describe, expect, it, vi } from 'vitest';
import { AppState } from '../../../src-renderer/state/app-state.svelte.ts';
import type { ExchangeState } from '../../../src-renderer/state/exchange.svelte.ts';
import { FakePage } from '../support/fake-page.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('ExchangeState', () => {
  let workbench: FakeWorkbench;
  let app: AppState;
  let exchange: ExchangeState;
  beforeEach(async () => {
    workbench = new FakeWorkbench();
    app = new AppState(workbench.invoke, new FakePage());
    await app.start();
    ({ exchange } = app);
  });

  const look = (text: string): Promise<void> => exchange.look({ name: 'mine.json', text });
  const labels = (): string[] => app.inventory.rows.all.map(({ label }) => label);
  const told = (): string[] => app.notices.shown.map(({ text }) => text);
  const entry = (list: 'items' | 'scenarios' | 'settings', place = 0) =>
    exchange.preview!.entries.find((each) => each.list === list && each.place === place)!;

  it('tells of a file that can not be read, and keeps what it showed', async () => {
    await look('items Strap');
    await look('broken');
    expect(told()).toEqual(['The file ends in the middle.']);
    expect([exchange.file?.text, exchange.toTake]).toEqual(['items Strap', 1]);
  });

  it('takes nothing in while an entry is refused, unless the rider passes over it', async () => {
    await look('items Strap\nitems Anvil refused');
    expect([exchange.canTake, exchange.refused.length]).toEqual([false, 1]);
    await exchange.take();
    expect(workbench.count('exchange.take')).toBe(0);
    exchange.passOverRefused = true;
    await exchange.take();
    expect(labels()).toContain('Strap');
  });

  it('changes nothing on screen where the taking fails', async () => {
    await look('items Strap');
    vi.spyOn(app.calls, 'ask').mockResolvedValueOnce({
      ok: false,
      error: { code: 'storage', message: 'No room.', fields: [] },
    });
    const before = labels();
    await exchange.take();
    expect([labels(), exchange.toTake, exchange.storing]).toEqual([before, 1, false]);
    expect(app.history.nextUndo).toBeNull();
  });

  it('leaves out with an entry all that needs it, until it is taken again', async () => {
    await look('items Strap\nitems Hook\nscenarios Coast needs 1');
    exchange.leaveOut(entry('items', 1), true);
    expect(exchange.toTake).toBe(1);
    expect(exchange.isOut(entry('scenarios'))).toBe(true);
    expect(exchange.heldBackBy(entry('scenarios'))?.label).toBe('Hook');
    await exchange.take();
    expect(workbench.calls.find(({ name }) => name === 'exchange.take')?.input).toMatchObject({
      leaveOut: [
        { list: 'items', place: 1 },
        { list: 'scenarios', place: 0 },
      ],
    });
    await look('items Strap\nitems Hook\nscenarios Coast needs 1');
    expect(exchange.toTake).toBe(3);
  });

  it('takes settings only where the rider checks them', async () => {
    await look('items Strap\nsettings');
    expect(exchange.toTake).toBe(1);
    exchange.leaveOut(entry('settings'), false);
    expect(exchange.toTake).toBe(2);
    await exchange.take();
    expect(workbench.calls.find(({ name }) => name === 'exchange.take')?.input).toMatchObject({
      settings: true,
      leaveOut: [],
    });
    expect(app.knobs?.draft.margin.weight).toBe(0.05);
  });

  it('reads every list anew, compares again, and is taken back and made again as one step', async () => {
    vi.useFakeTimers();
    const runs = workbench.count('comparison.run');
    await look('items Strap\nitems Hook');
    await exchange.take();
    await vi.advanceTimersByTimeAsync(1000);
    vi.useRealTimers();
    expect(labels()).toEqual(expect.arrayContaining(['Strap', 'Hook']));
    expect(workbench.count('comparison.run')).toBe(runs + 1);
    expect([exchange.preview, exchange.file]).toEqual([null, null]);
    expect(told()).toEqual(['Took in 2 entries of mine.json.']);
    await app.history.undo();
    expect(labels()).not.toContain('Hook');
    await app.history.redo();
    expect(labels()).toContain('Hook');
    await app.history.undo();
    expect(labels()).not.toContain('Hook');
  });
});
