import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { CallName, Invoke } from '../../../shared-types/contract.ts';
import type { Preferences } from '../../../shared-types/settings.ts';
import { BreakEvenState } from '../../../src-renderer/state/break-even.svelte.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import type { ComparisonSubject } from '../../../src-renderer/state/comparison.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { fakeMaps } from '../support/fake-map.ts';
import { demoCatalogue } from '../support/fake-workbench.ts';

interface Asked {
  readonly name: CallName;
  readonly input: { readonly runId: string; readonly leg: number };
}

/** The calls of the map alone; answers wait until the test lets them go. */
function mapWorkbench() {
  const catalogue = demoCatalogue();
  const maps: Readonly<Record<string, (input: never) => unknown>> = fakeMaps(catalogue);
  const asked: Asked[] = [];
  const waiting: (() => void)[] = [];
  let holding = false;
  const invoke = async (name: CallName, input: unknown): Promise<unknown> => {
    asked.push({ name, input } as Asked);
    const answered = maps[name]?.(input as never) ?? { ok: true, value: { share: 0.5 } };
    if (holding && name.startsWith('outlook.')) await new Promise<void>((go) => waiting.push(go));
    return answered;
  };
  return {
    ...{ catalogue, asked, invoke: invoke as Invoke },
    hold: () => (holding = true),
    release: (place: number) => waiting[place]?.(),
    count: (name: CallName) => asked.filter((each) => each.name === name).length,
  };
}

describe('BreakEvenState', () => {
  let workbench: ReturnType<typeof mapWorkbench>;
  let subject: ComparisonSubject | null;
  let unstored: Preferences | null;
  let state: BreakEvenState;
  beforeEach(() => {
    vi.useFakeTimers();
    workbench = mapWorkbench();
    subject = { tourId: 'demo-tour', scenarioIds: null };
    unstored = null;
    state = new BreakEvenState(new Calls(workbench.invoke, new NoticesState()), {
      subject: () => subject,
      unstoredPreferences: () => unstored,
    });
  });
  afterEach(() => vi.useRealTimers());

  /** Its map is ranked with a weight of the margin that the finding names. */
  function weighing(weight: number): Preferences {
    const { preferences } = workbench.catalogue.settings;
    return { ...preferences, margin: { ...preferences.margin, weight } };
  }

  it('asks nothing while there is nothing to compare', async () => {
    subject = null;
    await state.draw(0);
    await state.rank(weighing(1));
    expect(workbench.asked).toEqual([]);
    expect([state.map, state.drawing]).toEqual([null, false]);
  });

  it('tells why no map could be drawn, and keeps the one before', async () => {
    await state.draw(0);
    await state.draw(9);
    expect(state.failure?.message).toBe('There is no such leg.');
    expect(state.map?.leg).toBe(0);
    await state.draw(1);
    expect(state.failure).toBeNull();
  });

  it('shows progress from the start, and the map at the end', async () => {
    workbench.hold();
    const drawing = state.draw(1);
    expect([state.drawing, state.progress.shown, state.map]).toEqual([true, true, null]);
    await vi.advanceTimersByTimeAsync(0);
    expect(state.progress.share).toBe(0.5);
    workbench.release(0);
    await drawing;
    expect([state.drawing, state.progress.shown, state.map?.leg]).toEqual([false, false, 1]);
  });

  it('stops the run that it named, and takes no late answer', async () => {
    workbench.hold();
    const drawing = state.draw(0);
    state.stop();
    const [run, cancel] = ['outlook.map', 'runs.cancel'].map((name) =>
      workbench.asked.find((each) => each.name === name),
    );
    expect(cancel?.input.runId).toBe(run?.input.runId);
    workbench.release(0);
    await drawing;
    expect([state.drawing, state.map]).toEqual([false, null]);
  });

  it('drops the run before when another leg is asked for', async () => {
    workbench.hold();
    const older = state.draw(0);
    const newer = state.draw(2);
    expect(workbench.count('runs.cancel')).toBe(1);
    workbench.release(1);
    await newer;
    workbench.release(0);
    await older;
    expect(state.map?.leg).toBe(2);
  });

  it('ranks the map shown under new weights', async () => {
    await state.draw(0);
    await state.rank(weighing(0.9));
    expect(state.map?.finding).toBe('Ranked with 0.9');
    expect(workbench.count('outlook.map')).toBe(1);
  });

  it('never lets a late ranking replace a newer one', async () => {
    await state.draw(0);
    workbench.hold();
    const older = state.rank(weighing(0.3));
    const newer = state.rank(weighing(0.7));
    workbench.release(1);
    await newer;
    workbench.release(0);
    await older;
    expect(state.map?.finding).toBe('Ranked with 0.7');
  });

  it('ranks a fresh map under weights that are not stored yet', async () => {
    unstored = weighing(0.8);
    await state.draw(0);
    await vi.advanceTimersByTimeAsync(0);
    expect(state.map?.finding).toBe('Ranked with 0.8');
  });

  it('says that a map is of what was before, until it is drawn again', async () => {
    await state.draw(0);
    expect(state.outdated).toBe(false);
    state.outdate();
    expect(state.outdated).toBe(true);
    await state.draw(0);
    expect(state.outdated).toBe(false);
  });

  it('says so too of a map during which something changed, or that is no longer kept', async () => {
    workbench.hold();
    const drawing = state.draw(0);
    state.outdate();
    workbench.release(0);
    await drawing;
    expect(state.outdated).toBe(true);
    const again = state.draw(0);
    workbench.release(1);
    await again;
    workbench.catalogue.tours.length = 0;
    const ranking = state.rank(weighing(1));
    workbench.release(2);
    await ranking;
    expect(state.outdated).toBe(true);
  });

  it('shows no map of another tour', async () => {
    await state.draw(0);
    subject = { tourId: 'other', scenarioIds: null };
    expect(state.map).toBeNull();
    subject = { tourId: 'demo-tour', scenarioIds: ['demo-hub'] };
    expect(state.map?.tourId).toBe('demo-tour');
  });
});
