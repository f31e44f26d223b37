import { describe, expect, it } from 'vitest';
import { FaultRepeats } from '../../../src-main/hosts/fault-repeats.ts';

const minuteMs = 60_000;

describe('faults that come again', () => {
  it('are worth writing the first time, the tenth, the hundredth', () => {
    const repeats = new FaultRepeats();
    const times = Array.from({ length: 500 }, () => repeats.worthWriting('broken', 0));
    expect(times.filter((each) => each !== null)).toEqual([1, 10, 100]);
  });

  it('are worth writing once more where none was written for a minute', () => {
    const repeats = new FaultRepeats();
    const momentsMs = [0, minuteMs - 1, minuteMs, minuteMs + 1, 2 * minuteMs];
    expect(momentsMs.map((nowMs) => repeats.worthWriting('broken', nowMs))).toEqual([1, null, 3, null, 5]);
  });

  it('are counted each by itself', () => {
    const repeats = new FaultRepeats();
    const faults = ['one', 'other', 'one', 'other'];
    expect(faults.map((fault) => repeats.worthWriting(fault, 0))).toEqual([1, 1, null, null]);
  });

  it('are forgotten once a hundred others have come', () => {
    const repeats = new FaultRepeats();
    repeats.worthWriting('broken', 0);
    for (let at = 0; at < 100; at += 1) repeats.worthWriting(`other ${at}`, 0);
    expect(repeats.worthWriting('other 99', 0)).toBeNull();
    expect(repeats.worthWriting('broken', 0)).toBe(1);
  });
});
