import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { RunProgress } from '../../../src-renderer/state/run-progress.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('RunProgress', () => {
  let workbench: FakeWorkbench;
  let progress: RunProgress;
  beforeEach(() => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    progress = new RunProgress(new Calls(workbench.invoke, new NoticesState()));
  });
  afterEach(() => {
    progress.stop();
    vi.useRealTimers();
  });

  const asked = (): number => workbench.count('runs.progress');
  const pass = (ms: number): Promise<unknown> => vi.advanceTimersByTimeAsync(ms);

  it('neither shows nor asks anything of a short run', async () => {
    progress.follow('run-1');
    await pass(390);
    progress.stop();
    await pass(2000);
    expect([progress.shown, asked()]).toEqual([false, 0]);
  });

  it('asks every 200 ms once the run is long', async () => {
    progress.follow('run-1');
    workbench.runs.share = 0.25;
    await pass(410);
    expect([progress.shown, progress.share, asked()]).toEqual([true, 0.25, 1]);
    await pass(400);
    expect(asked()).toBe(3);
  });

  it('tells the time left only when it is no guess', async () => {
    progress.follow('run-1');
    workbench.runs.share = 0.2;
    await pass(900);
    expect(progress.secondsLeft).toBeNull();
    await pass(150);
    // A fifth in about 1 s leaves four fifths in about 4 s.
    expect(progress.secondsLeft).toBeGreaterThan(3.9);
    expect(progress.secondsLeft).toBeLessThan(4.3);
  });

  it('keeps what it knew when nothing is under way by that name', async () => {
    progress.follow('run-1');
    workbench.runs.share = 0.6;
    await pass(410);
    workbench.runs.share = null;
    await pass(200);
    expect(progress.share).toBe(0.6);
  });

  it('stays shown from one long run to the next, and starts from nothing', async () => {
    progress.follow('run-1');
    workbench.runs.share = 0.6;
    await pass(410);
    progress.follow('run-2');
    expect([progress.shown, progress.share]).toEqual([true, 0]);
  });

  it('shows a run that was asked for from its start', async () => {
    progress.follow('run-1', true);
    expect(progress.shown).toBe(true);
    await pass(0);
    expect(asked()).toBe(1);
  });

  it('takes no late answer about a run it has left', async () => {
    workbench.hold('runs.progress');
    workbench.runs.share = 0.9;
    progress.follow('run-1');
    await pass(410);
    progress.follow('run-2');
    workbench.release(0);
    await pass(0);
    expect(progress.share).toBe(0);
  });
});
