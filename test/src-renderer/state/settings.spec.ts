import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Settings } from '../../../shared-types/settings.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { EditHistory } from '../../../src-renderer/state/edit-history.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { SettingsState } from '../../../src-renderer/state/settings.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('SettingsState', () => {
  let workbench: FakeWorkbench;
  let taken: { now: Settings; before: Settings | null }[];
  let history: EditHistory;
  let settings: SettingsState;
  beforeEach(async () => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    taken = [];
    const notices = new NoticesState();
    history = new EditHistory(notices);
    settings = new SettingsState(
      new Calls(workbench.invoke, notices),
      (now, before) => taken.push({ now, before }),
      history,
    );
    await settings.load();
  });
  afterEach(() => vi.useRealTimers());

  it('goes back to what is stored when a change is refused', async () => {
    const outcome = await settings.save({ currency: 'euro' });
    expect(outcome.ok ? [] : outcome.error.fields).toMatchObject([{ path: 'settings.currency' }]);
    expect(settings.current?.currency).toBe('EUR');
    expect(taken).toHaveLength(1);
  });

  it('stores nothing before it has been read', async () => {
    const unread = new SettingsState(
      new Calls(workbench.invoke, new NoticesState()),
      () => undefined,
      history,
    );
    expect((await unread.save({ theme: 'dark' })).ok).toBe(false);
    expect(workbench.count('settings.save')).toBe(0);
  });

  it('loses neither of two changes made at once', async () => {
    await Promise.all([settings.save({ currency: 'JPY' }), settings.save({ theme: 'dark' })]);
    expect(workbench.catalogue.settings).toMatchObject({ currency: 'JPY', theme: 'dark' });
    expect(settings.current).toMatchObject({ currency: 'JPY', theme: 'dark' });
  });

  it('tells what was stored before and what is now', async () => {
    await settings.save({ theme: 'light' });
    expect(taken[0]?.before).toBeNull();
    expect([taken[1]?.before?.theme, taken[1]?.now.theme]).toEqual(['system', 'light']);
  });

  it('stores weights once, where the slider rests', async () => {
    const { preferences } = settings.current!;
    for (const weight of [0.5, 0.6, 0.7]) {
      settings.keepPreferences({ ...preferences, cost: { ...preferences.cost, weight } });
      await vi.advanceTimersByTimeAsync(100);
    }
    expect([settings.waiting, workbench.count('settings.save')]).toEqual([true, 0]);
    await vi.advanceTimersByTimeAsync(1000);
    expect([settings.waiting, workbench.count('settings.save')]).toEqual([false, 1]);
    expect(workbench.catalogue.settings.preferences.cost.weight).toBe(0.7);
  });
});
