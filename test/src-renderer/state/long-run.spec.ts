import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { LongRun } from '../../../src-renderer/state/long-run.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('LongRun', () => {
  let workbench: FakeWorkbench;
  let run: LongRun;
  beforeEach(() => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    run = new LongRun(new Calls(workbench.invoke, new NoticesState()));
  });
  afterEach(() => vi.useRealTimers());

  it('is under way from its beginning to its end, under a name of its own', () => {
    const first = run.begin();
    expect([run.running, run.progress.shown, run.isUnderWay(first)]).toEqual([true, true, true]);
    run.end();
    expect([run.running, run.progress.shown, run.isUnderWay(first)]).toEqual([false, false, false]);
    expect(run.begin()).not.toBe(first);
  });

  it('has the run before it stopped, once', () => {
    run.begin();
    expect(workbench.count('runs.cancel')).toBe(0);
    run.begin();
    expect(workbench.count('runs.cancel')).toBe(1);
    run.end();
    run.begin();
    expect(workbench.count('runs.cancel')).toBe(1);
  });

  it('goes on when it is cancelled, until it has answered', () => {
    run.begin();
    run.cancel();
    expect([run.running, workbench.count('runs.cancel')]).toEqual([true, 1]);
    run.end();
    run.cancel();
    expect([run.running, workbench.count('runs.cancel')]).toEqual([false, 1]);
  });
});
