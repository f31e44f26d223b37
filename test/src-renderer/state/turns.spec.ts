import { describe, expect, it } from 'vitest';
import { Turns } from '../../../src-renderer/state/turns.ts';

describe('Turns', () => {
  it('refuses an old answer after a newer one was taken', () => {
    const turns = new Turns();
    const [first, second] = [turns.take(), turns.take()];
    expect([second.settle(), first.settle()]).toEqual([true, false]);
  });

  it('takes an old answer while the newer one is still out', () => {
    const turns = new Turns();
    const [first, second] = [turns.take(), turns.take()];
    expect([first.settle(), second.settle()]).toEqual([true, true]);
  });

  it('knows which question is the newest', () => {
    const turns = new Turns();
    const first = turns.take();
    expect(first.isNewest()).toBe(true);
    const second = turns.take();
    expect([first.isNewest(), second.isNewest()]).toEqual([false, true]);
  });

  it('keeps subjects apart', () => {
    const turns = new Turns();
    const one = turns.take('one');
    turns.take('other').settle();
    expect([one.isNewest(), one.settle()]).toEqual([true, true]);
  });
});
