import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { demoScenarios } from '../../../db/demo/demo.ts';
import { noLimits } from '../../../shared-types/limits.ts';
import { usualRules, type Scenario } from '../../../shared-types/scenario.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { KitSearchState } from '../../../src-renderer/state/kit-search.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

const [like] = demoScenarios as [Scenario, ...Scenario[]];
const request = { tourId: 'demo-tour', scenarioId: like.id, choices: [], limits: noLimits };

function setup() {
  const workbench = new FakeWorkbench();
  const state = new KitSearchState(new Calls(workbench.invoke, new NoticesState()));
  return { workbench, state };
}

describe('the state of the kit search', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('holds what was found', async () => {
    const { state } = setup();
    await state.run(request, like);
    expect(state.result?.kits).toHaveLength(2);
    expect([state.running, state.stale, state.failure, state.progress.shown]).toEqual([
      ...[false, false],
      null,
      false,
    ]);
  });

  it('shows what has been found while it runs', async () => {
    const { workbench, state } = setup();
    workbench.hold('kits.search');
    void state.run(request, like);
    expect([state.running, state.result]).toEqual([true, null]);
    await vi.advanceTimersByTimeAsync(700);
    expect(state.result?.complete).toBe(false);
    workbench.release(0);
    await vi.advanceTimersByTimeAsync(0);
    expect([state.running, state.result?.complete]).toEqual([false, true]);
    const asked = workbench.count('kits.soFar');
    await vi.advanceTimersByTimeAsync(3000);
    expect(workbench.count('kits.soFar')).toBe(asked);
  });

  it('asks the search under way to stop, and waits for what it has', async () => {
    const { workbench, state } = setup();
    state.stop();
    expect(workbench.count('runs.cancel')).toBe(0);
    workbench.hold('kits.search');
    void state.run(request, like);
    state.stop();
    await vi.advanceTimersByTimeAsync(0);
    expect(workbench.count('runs.cancel')).toBe(1);
    expect(state.running).toBe(true);
    workbench.release(0);
    await vi.advanceTimersByTimeAsync(0);
    expect(state.running).toBe(false);
  });

  it.each([
    { what: 'a choice', change: (state: KitSearchState) => state.choose('bank', 'must') },
    { what: 'a limit', change: (state: KitSearchState) => state.limit({ ...noLimits, grams: 600 }) },
    { what: 'another scenario', change: (state: KitSearchState) => state.take('scenario-2') },
    { what: 'a stored change', change: (state: KitSearchState) => state.outdate() },
  ])('says that what is shown is older than $what', async ({ change }) => {
    const { state } = setup();
    change(state);
    expect(state.stale).toBe(false);
    await state.run(request, like);
    change(state);
    expect(state.stale).toBe(true);
    await state.run(request, like);
    expect(state.stale).toBe(false);
  });

  it('is as good as before when a scenario is kept or renamed, and old once its rules change', async () => {
    const { state } = setup();
    await state.run(request, like);
    state.reconsider([...demoScenarios, { ...like, id: 'kept' }]);
    state.reconsider([{ ...like, label: 'Other words', kit: [] }]);
    expect(state.stale).toBe(false);
    state.reconsider([{ ...like, rules: { ...usualRules, atWall: 'banks-first' } }]);
    expect(state.stale).toBe(true);
  });

  it('is old once the scenario it was searched with is gone', async () => {
    const { state } = setup();
    state.reconsider([]);
    await state.run(request, like);
    expect(state.stale).toBe(false);
    state.reconsider([]);
    expect(state.stale).toBe(true);
  });

  it('keeps what was found before when a search is refused, marked as old', async () => {
    const { state } = setup();
    await state.run(request, like);
    await state.run({ ...request, limits: { ...noLimits, grams: -1 } }, { ...like, id: 'other' });
    expect(state.failure?.code).toBe('bad-input');
    expect([state.result?.kits.length, state.stale, state.like]).toEqual([2, true, like]);
  });
});
