import { describe, expect, it } from 'vitest';
import { timeLeftText } from '../../../../src-renderer/parts/long-run/time-left.ts';

describe('timeLeftText()', () => {
  it.each([
    [null, ''],
    [0.2, ', about 1\u00a0s left'],
    [4.2, ', about 4\u00a0s left'],
    [90, ', about 90\u00a0s left'],
    [150, ', about 3\u00a0min left'],
  ])('writes %s', (seconds, text) => {
    expect(timeLeftText(seconds, 'en-GB')).toBe(text);
  });
});
