import { afterEach, describe, expect, it, vi } from 'vitest';
import { runOrExit } from '../../../src-main/hosts/run-or-exit.ts';

describe('running or exiting', () => {
  afterEach(() => {
    process.exitCode = undefined;
    vi.restoreAllMocks();
  });

  it('ends with code 1 and one line on a fault', async () => {
    const line = vi.spyOn(console, 'error').mockReturnValue();
    await runOrExit('It failed', () => Promise.reject(new Error('no disk')));
    expect(line.mock.calls).toEqual([['It failed: no disk']]);
    expect(process.exitCode).toBe(1);
  });

  it('says nothing and leaves the code alone otherwise', async () => {
    const line = vi.spyOn(console, 'error').mockReturnValue();
    await runOrExit('It failed', () => Promise.resolve());
    expect(line).not.toHaveBeenCalled();
    expect(process.exitCode).toBeUndefined();
  });
});
