import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Delay } from '../../../src-renderer/state/delay.ts';

describe('Delay', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('runs nothing before the pause is over', () => {
    const done: string[] = [];
    new Delay(100).run(() => done.push('ran'));
    vi.advanceTimersByTime(99);
    expect(done).toEqual([]);
  });

  it('runs only the last of a burst', () => {
    const done: string[] = [];
    const delay = new Delay(100);
    delay.run(() => done.push('first'));
    vi.advanceTimersByTime(60);
    delay.run(() => done.push('last'));
    vi.advanceTimersByTime(200);
    expect(done).toEqual(['last']);
  });
});
