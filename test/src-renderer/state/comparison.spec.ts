import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Preferences } from '../../../shared-types/settings.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { ComparisonState, type ComparisonSubject } from '../../../src-renderer/state/comparison.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

const demo: ComparisonSubject = { tourId: 'demo-tour', scenarioIds: null };

describe('ComparisonState', () => {
  let workbench: FakeWorkbench;
  let notices: NoticesState;
  let comparison: ComparisonState;
  let subject: ComparisonSubject | null;
  let unstored: Preferences | null;
  beforeEach(() => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    notices = new NoticesState();
    subject = demo;
    unstored = null;
    comparison = new ComparisonState(new Calls(workbench.invoke, notices), {
      subject: () => subject,
      unstoredPreferences: () => unstored,
    });
  });
  afterEach(() => vi.useRealTimers());

  /** Weights under which nothing but the price counts: what is owned comes first. */
  function cheapest(): Preferences {
    const { preferences } = workbench.catalogue.settings;
    const none = { grams: 0, frontWheelGrams: 0, margin: 0 };
    return {
      ...preferences,
      cost: { ...preferences.cost, weight: 1 },
      grams: { ...preferences.grams, weight: none.grams },
      frontWheelGrams: { ...preferences.frontWheelGrams, weight: none.frontWheelGrams },
      margin: { ...preferences.margin, weight: none.margin },
    };
  }

  const runIds = (): string[] =>
    workbench.calls
      .filter(({ name }) => name === 'comparison.run')
      .map(({ input }) => (input as { readonly runId: string }).runId);

  it('asks nothing while there is nothing to compare', async () => {
    subject = null;
    await comparison.run();
    expect(workbench.count('comparison.run')).toBe(0);
    expect([comparison.current, comparison.failure, comparison.updating]).toEqual([null, null, false]);
  });

  it('keeps the old result readable when a new run fails', async () => {
    await comparison.run();
    const old = comparison.current;
    workbench.catalogue.tours.length = 0;
    await comparison.run();
    expect(comparison.current).toBe(old);
    expect(comparison.failure?.message).toBe('There is no such tour.');
    expect(notices.shown).toHaveLength(1);
  });

  it('shows no result of another tour beside a failure', async () => {
    await comparison.run();
    subject = { ...demo, tourId: 'nothing' };
    await comparison.run();
    expect(comparison.current).toBeNull();
  });

  it('never lets a late answer replace a newer one', async () => {
    workbench.hold('comparison.run');
    const older = comparison.run();
    workbench.catalogue.tours[0] = { ...workbench.catalogue.tours[0]!, label: 'Renamed since' };
    const newer = comparison.run();
    await vi.advanceTimersByTimeAsync(0);
    workbench.release(1);
    await newer;
    workbench.release(0);
    await older;
    expect(comparison.current?.tour.label).toBe('Renamed since');
    expect(comparison.updating).toBe(false);
  });

  it('stops the run before when a newer one starts', async () => {
    workbench.hold('comparison.run');
    const older = comparison.run();
    const newer = comparison.run();
    await vi.advanceTimersByTimeAsync(0);
    workbench.release(0);
    workbench.release(1);
    await Promise.all([older, newer]);
    const [first, second] = runIds();
    expect([...workbench.runs.cancelled]).toEqual([first]);
    expect(second).not.toBe(first);
    expect([comparison.cancelled, notices.shown]).toEqual([false, []]);
    expect(comparison.current?.tour.id).toBe('demo-tour');
  });

  it('stops nothing that is done', async () => {
    await comparison.run();
    await comparison.run();
    expect(workbench.count('runs.cancel')).toBe(0);
  });

  it('lets the rider stop a run, keeps the old result and says nothing more', async () => {
    await comparison.run();
    const old = comparison.current;
    workbench.hold('comparison.run');
    const stopped = comparison.run();
    await vi.advanceTimersByTimeAsync(500);
    expect(comparison.progress.shown).toBe(true);
    comparison.cancel();
    expect([comparison.cancelled, comparison.updating, comparison.progress.shown]).toEqual([
      true,
      false,
      false,
    ]);
    workbench.release(0);
    await stopped;
    expect([comparison.current, comparison.failure, notices.shown]).toEqual([old, null, []]);
    expect([...workbench.runs.cancelled]).toEqual([runIds()[1]]);
  });

  it('takes no answer that comes after the rider stopped it', async () => {
    workbench.hold('comparison.run');
    const stopped = comparison.run();
    comparison.cancel();
    workbench.runs.cancelled.clear();
    await vi.advanceTimersByTimeAsync(0);
    workbench.release(0);
    await stopped;
    expect([comparison.current, comparison.cancelled]).toEqual([null, true]);
  });

  it('takes a run stopped elsewhere as stopped, not as failed', async () => {
    workbench.hold('comparison.run');
    const stopped = comparison.run();
    await vi.advanceTimersByTimeAsync(0);
    workbench.runs.cancelled.add(runIds()[0]!);
    workbench.release(0);
    await stopped;
    expect([comparison.cancelled, comparison.updating, comparison.failure]).toEqual([true, false, null]);
    expect(notices.shown).toEqual([]);
  });

  it('forgets that it was stopped once the rider compares again', async () => {
    comparison.cancel();
    await comparison.run();
    expect(comparison.cancelled).toBe(false);
  });

  it('is updating, with the old result, until the answer is there', async () => {
    await comparison.run();
    const old = comparison.current;
    workbench.hold('comparison.run');
    comparison.request();
    await vi.advanceTimersByTimeAsync(500);
    expect([comparison.updating, comparison.current]).toEqual([true, old]);
    workbench.release(0);
    await vi.advanceTimersByTimeAsync(0);
    expect(comparison.updating).toBe(false);
    expect(comparison.current).not.toBe(old);
  });

  it('runs once for a burst of changes', async () => {
    for (let i = 0; i < 5; i += 1) comparison.request();
    await vi.advanceTimersByTimeAsync(1000);
    expect(workbench.count('comparison.run')).toBe(1);
  });

  it('ranks anew without simulating anything', async () => {
    await comparison.run();
    await comparison.rank(cheapest());
    expect(comparison.current?.scenarios[0]?.id).toBe('demo-banks');
    expect(comparison.current?.advice.why).toBe('Ranked anew.');
    expect(workbench.count('comparison.run')).toBe(1);
  });

  it('answers with the fields in error when weights are refused', async () => {
    await comparison.run();
    const before = comparison.current;
    const { preferences } = workbench.catalogue.settings;
    const outcome = await comparison.rank({
      ...preferences,
      cost: { ...preferences.cost, unacceptable: -5 },
    });
    expect(outcome.ok ? [] : outcome.error.fields).toMatchObject([{ path: 'preferences.cost.unacceptable' }]);
    expect(comparison.current).toBe(before);
  });

  it('ranks a run under weights that were not stored yet', async () => {
    unstored = cheapest();
    await comparison.run();
    await vi.advanceTimersByTimeAsync(0);
    expect(comparison.current?.scenarios[0]?.id).toBe('demo-banks');
  });
});
