import { describe, expect, it } from 'vitest';
import {
  dayOfYear,
  isoDateOf,
  midMonthDay,
  middlesOfMonths,
  monthOf,
  noonOf,
  noonsOfMonth,
} from '../../../../src-main/model/sun/calendar.ts';

describe('the calendar', () => {
  it.each([
    ['2027-01-01', 1],
    ['2027-03-01', 60],
    ['2028-03-01', 61],
    ['2028-02-29', 60],
    ['2027-12-31', 365],
    ['2028-12-31', 366],
  ])('numbers %s as day %d of its year', (date, number) => {
    expect(dayOfYear(noonOf(date))).toBe(number);
  });

  it('counts days on past a new year', () => {
    expect(isoDateOf(noonOf('2027-12-30', 3))).toBe('2028-01-02');
    expect(monthOf(noonOf('2027-12-30', 3))).toBe(0);
  });

  it('takes the middle days of FAO-56 for months', () => {
    // FAO-56 annex 2 is for the 15th of each month.
    expect(Array.from({ length: 12 }, (_, month) => midMonthDay(month))).toEqual([
      15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349,
    ]);
  });
});

describe('the months', () => {
  it('have their days of a common year', () => {
    expect([0, 1, 11].map((month) => noonsOfMonth(month).length)).toEqual([31, 28, 31]);
  });

  it('have their middles in the year asked for', () => {
    const middles = middlesOfMonths(noonOf('2028-02-29'));
    expect(middles.map(isoDateOf)[0]).toBe('2028-01-15');
    expect(middles.map(isoDateOf)[11]).toBe('2028-12-15');
  });
});
