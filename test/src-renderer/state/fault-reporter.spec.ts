import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { pageFault } from '../../../shared-types/diagnostics.ts';
import { failure } from '../../../shared-types/outcome.ts';
import { FaultReporter } from '../../../src-renderer/state/fault-reporter.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('FaultReporter', () => {
  let workbench: FakeWorkbench;
  let reporter: FaultReporter;
  beforeEach(() => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    reporter = new FaultReporter(workbench.invoke, () => 'tours');
  });
  afterEach(() => vi.useRealTimers());

  /** Tells of an event as a window does. */
  class Page {
    readonly told = new Map<string, (event: never) => void>();

    addEventListener(type: string, listener: (event: never) => void): void {
      this.told.set(type, listener);
    }
  }

  const inputs = (): readonly unknown[] => workbench.calls.map(({ input }) => input);

  it('reports few a minute, however many there are', () => {
    for (let each = 0; each < 100; each += 1) reporter.report(new Error(`fault ${each}`));
    expect(workbench.count('diagnostics.report')).toBe(6);
    vi.advanceTimersByTime(60_000);
    reporter.report(new Error('a later one'));
    expect(workbench.count('diagnostics.report')).toBe(7);
  });

  it('says nothing of a report that fails', async () => {
    const calls: unknown[] = [];
    const failing = new FaultReporter(
      (name) => {
        calls.push(name);
        return Promise.resolve(failure('internal', 'No answer.'));
      },
      () => 'tours',
    );
    failing.report(new Error('a fault'));
    await vi.runAllTimersAsync();
    expect(calls).toEqual(['diagnostics.report']);
  });

  it('keeps to what the call takes, however long the fault and whatever was thrown', () => {
    const long = new FaultReporter(workbench.invoke, () => 'x'.repeat(1000));
    for (const thrown of [new Error('y'.repeat(10_000)), undefined, null, 7, { toString: () => 'an object' }])
      long.report(thrown);
    expect(inputs().filter((input) => !pageFault.safeParse(input).success)).toEqual([]);
    expect(inputs().length).toBe(5);
  });

  it('says where, what, and by which way through the code', () => {
    reporter.report(new TypeError('no such row'));
    const { where, what } = inputs()[0] as { where: string; what: string };
    expect(where).toBe('tours');
    expect(what).toMatch(/^TypeError: no such row\n\s+at /);
    expect(what.split('no such row').length).toBe(2);
  });

  it('hears of faults that nobody caught', () => {
    const page = new Page();
    reporter.listen(page);
    page.told.get('error')?.({ error: new Error('while drawing'), message: '' } as never);
    page.told.get('error')?.({ error: null, message: 'without an error' } as never);
    page.told.get('unhandledrejection')?.({ reason: new Error('while waiting') } as never);
    expect(inputs()).toMatchObject([
      { what: expect.stringContaining('while drawing') as string },
      { what: 'without an error' },
      { what: expect.stringContaining('while waiting') as string },
    ]);
  });
});
