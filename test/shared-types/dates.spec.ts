import { afterEach, describe, expect, it } from 'vitest';
import { addDays, dayMonth, fullDate, todayFrom } from '../../shared-types/dates.ts';

describe('calendar dates', () => {
  const zone = process.env['TZ'];
  afterEach(() => (process.env['TZ'] = zone));

  it('hands on what is no date rather than fail', () => {
    expect([addDays('', 3), dayMonth('soon'), fullDate('2027-99-99')]).toEqual(['', 'soon', '2027-99-99']);
  });

  // 2028 is a leap year, 2027 is not (Gregorian calendar).
  it.each([
    ['2027-02-28', 1, '2027-03-01'],
    ['2028-02-28', 1, '2028-02-29'],
    ['2027-12-31', 1, '2028-01-01'],
    ['2027-05-03', 23, '2027-05-26'],
    ['2027-03-27', 2, '2027-03-29'],
  ])('counts from %s by %d days over every boundary', (start, days, end) => {
    expect(addDays(start, days)).toBe(end);
  });

  // One zone on either side of UTC: a hidden use of local time shows another day in one of them.
  it.each(['America/Los_Angeles', 'Asia/Kathmandu'])('shows the very day it was given in %s', (zone) => {
    process.env['TZ'] = zone;
    expect(dayMonth('2027-05-03', 'en-GB')).toBe('3 May');
    expect(fullDate('2027-01-01', 'en-GB')).toBe('1 January 2027');
    expect(addDays('2027-03-13', 2)).toBe('2027-03-15');
  });

  it('takes today from the wall clock, not from UTC', () => {
    expect(todayFrom(new Date(2027, 0, 5, 0, 30))).toBe('2027-01-05');
    expect(todayFrom(new Date(2027, 11, 31, 23, 30))).toBe('2027-12-31');
  });
});
