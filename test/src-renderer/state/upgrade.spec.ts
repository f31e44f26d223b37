import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { AppState } from '../../../src-renderer/state/app-state.svelte.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { UpgradeState } from '../../../src-renderer/state/upgrade.svelte.ts';
import { FakePage } from '../support/fake-page.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('UpgradeState', () => {
  let workbench: FakeWorkbench;
  let upgrade: UpgradeState;
  beforeEach(() => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    const { catalogue } = workbench;
    upgrade = new UpgradeState(new Calls(workbench.invoke, new NoticesState()), {
      items: () => catalogue.items,
      scenarios: () => catalogue.scenarios,
      tours: () => catalogue.tours,
    });
    upgrade.put('add', 'demo-panel-20', 1);
  });
  afterEach(() => vi.useRealTimers());

  it('asks what is chosen, on all tours that are not left out', async () => {
    upgrade.put('remove', 'demo-bank-10', 1);
    await upgrade.check();
    expect(workbench.calls.at(-1)).toMatchObject({
      name: 'upgrade.check',
      input: {
        base: { as: 'owned' },
        add: [{ itemId: 'demo-panel-20', quantity: 1 }],
        remove: [{ itemId: 'demo-bank-10', quantity: 1 }],
        tourIds: ['demo-tour'],
      },
    });
    expect([upgrade.shown?.change, upgrade.running, upgrade.stale]).toEqual(['demo-panel-20', false, null]);
  });

  it('takes a line off at 0, and no more pieces out than are carried', () => {
    upgrade.put('add', 'demo-panel-20', 0);
    upgrade.put('remove', 'demo-bank-10', 5);
    expect(upgrade.question).toMatchObject({ add: [], remove: [{ itemId: 'demo-bank-10', quantity: 1 }] });
  });

  it('forgets what was retired or removed since it was chosen', () => {
    upgrade.base = { as: 'scenario', scenarioId: 'demo-banks' };
    upgrade.checkOn('demo-tour', false);
    expect(upgrade.question.tourIds).toEqual([]);
    workbench.catalogue.items = workbench.catalogue.items.filter(({ id }) => id !== 'demo-panel-20');
    workbench.catalogue.scenarios = [];
    upgrade.checkOn('demo-tour', true);
    expect(upgrade.question).toEqual({ base: { as: 'owned' }, add: [], remove: [], tourIds: ['demo-tour'] });
  });

  it('says when what is shown answers another choice, and when the catalogue changed', async () => {
    await upgrade.check();
    upgrade.put('add', 'demo-panel-20', 2);
    expect(upgrade.stale).toBe('another');
    upgrade.put('add', 'demo-panel-20', 1);
    upgrade.outdate();
    expect(upgrade.stale).toBe('changed');
    await upgrade.check();
    expect(upgrade.stale).toBeNull();
  });

  it('is stale at once when the catalogue changed while it was checked', async () => {
    workbench.hold('upgrade.check');
    const run = upgrade.check();
    await vi.advanceTimersByTimeAsync(0);
    upgrade.outdate();
    workbench.release(0);
    await run;
    expect(upgrade.stale).toBe('changed');
  });

  it('keeps the old result readable and tells of a failure beside it', async () => {
    await upgrade.check();
    workbench.catalogue.tours.length = 0;
    upgrade.put('remove', 'demo-bank-10', 1);
    await upgrade.check();
    expect(upgrade.shown).not.toBeNull();
    expect(upgrade.failure?.message).toMatch(/at least one tour/);
  });

  it('stops at the rider’s wish and takes no late answer', async () => {
    workbench.hold('upgrade.check');
    const run = upgrade.check();
    await vi.advanceTimersByTimeAsync(0);
    expect(upgrade.running).toBe(true);
    upgrade.cancel();
    workbench.release(0);
    await run;
    expect([upgrade.running, upgrade.cancelled, upgrade.shown]).toEqual([false, true, null]);
    expect(workbench.count('runs.cancel')).toBe(1);
  });

  it('says so when the run was stopped elsewhere', async () => {
    workbench.hold('upgrade.check');
    const run = upgrade.check();
    await vi.advanceTimersByTimeAsync(0);
    const { runId } = workbench.calls.at(-1)!.input as { readonly runId: string };
    workbench.runs.cancelled.add(runId);
    workbench.release(0);
    await run;
    expect([upgrade.cancelled, upgrade.failure]).toEqual([true, null]);
  });
});

describe('the upgrade check among the other states', () => {
  let app: AppState;
  beforeEach(async () => {
    vi.useFakeTimers();
    app = new AppState(new FakeWorkbench().invoke, new FakePage());
    await app.start();
    app.upgrade.put('add', 'demo-panel-20', 1);
    await app.upgrade.check();
  });
  afterEach(() => vi.useRealTimers());

  it('is old once something of the catalogue was stored', async () => {
    expect(app.upgrade.stale).toBeNull();
    await app.inventory.move('demo-camera', 'retired');
    expect(app.upgrade.stale).toBe('changed');
  });

  it('is old once other weights were stored, for the verdict rests on them', async () => {
    const { preferences } = app.settings.current!;
    await app.weigh({ ...preferences, margin: { ...preferences.margin, weight: 0.1 } });
    await vi.advanceTimersByTimeAsync(1000);
    expect(app.upgrade.stale).toBe('changed');
  });

  it('is not old for another theme', async () => {
    await app.settings.save({ theme: 'dark' });
    expect(app.upgrade.stale).toBeNull();
  });
});
