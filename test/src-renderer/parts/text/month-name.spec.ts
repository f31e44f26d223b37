import { describe, expect, it } from 'vitest';
import { monthName, monthsAYear } from '../../../../src-renderer/parts/text/month-name.ts';

describe('monthName()', () => {
  // The tests run east of UTC, where the first of a month at midnight is already the day before elsewhere.
  it('is not shifted by the time zone', () => {
    expect(monthName(0, 'long', 'en-GB')).toBe('January');
    expect(monthName(11, 'long', 'en-GB')).toBe('December');
  });

  it('names each month once', () => {
    const names = Array.from({ length: monthsAYear }, (_, month) => monthName(month, 'short', 'en-GB'));
    expect(new Set(names).size).toBe(12);
    expect(names[4]).toBe('May');
  });
});
