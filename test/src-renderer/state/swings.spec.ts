import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Comparison } from '../../../shared-types/comparison.ts';
import type { Preferences } from '../../../shared-types/settings.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import type { ComparisonSubject } from '../../../src-renderer/state/comparison.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { SwingsState } from '../../../src-renderer/state/swings.svelte.ts';
import { demoComparison } from '../support/demo-comparison.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('SwingsState', () => {
  let workbench: FakeWorkbench;
  let comparison: Comparison | null;
  let subject: ComparisonSubject | null;
  let preferences: Preferences | null;
  let swings: SwingsState;
  beforeEach(() => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    comparison = demoComparison();
    subject = { tourId: 'demo-tour', scenarioIds: null };
    preferences = workbench.catalogue.settings.preferences;
    swings = new SwingsState(new Calls(workbench.invoke, new NoticesState()), {
      comparison: () => comparison,
      subject: () => subject,
      preferences: () => preferences,
    });
  });
  afterEach(() => vi.useRealTimers());

  it('asks nothing while there is nothing on the board', async () => {
    comparison = null;
    await swings.run();
    expect([workbench.count('outlook.swings'), swings.running, swings.shown]).toEqual([0, false, null]);
  });

  it('ranks with the weights the rider has now, stored or not', async () => {
    preferences = { ...preferences!, margin: { ...preferences!.margin, weight: 0.77 } };
    await swings.run();
    expect(swings.shown?.leadPoints).toBe(0.77);
    expect([swings.running, swings.stale, swings.failure]).toEqual([false, false, null]);
  });

  it('is stale once the board shows something newer, until it is asked again', async () => {
    await swings.run();
    comparison = { ...comparison! };
    expect([swings.stale, swings.shown !== null]).toEqual([true, true]);
    await swings.run();
    expect(swings.stale).toBe(false);
  });

  it('is stale at once when the board changed while it was looked for', async () => {
    workbench.hold('outlook.swings');
    const run = swings.run();
    await vi.advanceTimersByTimeAsync(0);
    comparison = { ...comparison! };
    workbench.release(0);
    await run;
    expect([swings.shown !== null, swings.stale]).toEqual([true, true]);
  });

  it('shows nothing of another tour', async () => {
    await swings.run();
    comparison = { ...comparison!, tour: { ...comparison!.tour, id: 'other-tour' } };
    expect([swings.shown, swings.stale]).toEqual([null, false]);
  });

  it('keeps the old result readable and tells of a failure beside it', async () => {
    await swings.run();
    const old = swings.shown;
    workbench.catalogue.tours.length = 0;
    await swings.run();
    expect(swings.shown).toBe(old);
    expect(swings.failure?.message).toBe('There is no such tour.');
  });

  it('shows its progress from the start, stops at the rider’s wish and takes no late answer', async () => {
    workbench.hold('outlook.swings');
    const run = swings.run();
    await vi.advanceTimersByTimeAsync(0);
    expect([swings.running, swings.progress.shown]).toEqual([true, true]);
    swings.cancel();
    expect([swings.running, swings.progress.shown, swings.cancelled]).toEqual([false, false, true]);
    workbench.release(0);
    await run;
    expect([swings.shown, swings.failure]).toEqual([null, null]);
    expect(workbench.runs.cancelled.size).toBe(1);
  });
});
