import { describe, expect, it } from 'vitest';
import {
  clockTime,
  periodName,
  periodPhrase,
  riddenPeriods,
  sunUpText,
} from '../../../../../src-renderer/views/tours/leg-sun/periods.ts';
import { monthDates, sunPeriod } from '../../../support/fake-leg-sun.ts';

const year = monthDates.map((date) => sunPeriod(date));
const monthsOf = (firstDate: string, days: number): string[] =>
  riddenPeriods(year, 'month', firstDate, days).map(({ date }) => date.slice(5, 7));

describe('riddenPeriods()', () => {
  it('takes every day of a leg shown by day', () => {
    const days = [sunPeriod('2027-05-03'), sunPeriod('2027-05-04')];
    expect(riddenPeriods(days, 'day', '2027-05-03', 2)).toBe(days);
  });

  it('takes the one month of a short leg', () => {
    expect(monthsOf('2027-05-03', 6)).toEqual(['05']);
  });

  it('takes a month that only one day falls in', () => {
    expect(monthsOf('2027-05-31', 2)).toEqual(['05', '06']);
  });

  it('goes on over new year in the order ridden', () => {
    expect(monthsOf('2027-11-20', 60)).toEqual(['11', '12', '01']);
  });

  it('finds the month of the 29th of February', () => {
    expect(monthsOf('2028-02-29', 1)).toEqual(['02']);
    expect(monthsOf('2028-02-28', 3)).toEqual(['02', '03']);
  });

  it('takes each month of a whole year once', () => {
    expect(monthsOf('2027-05-03', 366)).toHaveLength(12);
  });
});

describe('names of periods', () => {
  it('are days or months in the manner asked for', () => {
    expect(periodName('2027-05-03', 'day', 'en-GB')).toBe('3 May');
    expect(periodName('2027-01-15', 'month', 'en-GB')).toBe('Jan');
  });

  it('stand in a sentence after their own word', () => {
    expect(periodPhrase('2027-05-03', 'day', 'en-GB')).toBe('on 3 May');
    expect(periodPhrase('2027-12-15', 'month', 'en-GB')).toBe('in December');
  });
});

describe('clockTime()', () => {
  it.each([
    [0, '00:00'],
    [5.2, '05:12'],
    [23.999, '00:00'],
    [24.25, '00:15'],
    [-0.25, '23:45'],
    [12 + 59.6 / 60, '13:00'],
  ])('shows %d h as %s', (hours, text) => {
    expect(clockTime(hours)).toBe(text);
  });
});

describe('sunUpText()', () => {
  it('says so where the sun neither rises nor sets', () => {
    expect([sunUpText({ as: 'up' }), sunUpText({ as: 'down' })]).toEqual([
      'the sun stays up',
      'the sun stays down',
    ]);
  });

  it('gives sunrise and sunset by the clock', () => {
    expect(sunUpText({ as: 'rises', riseH: 5.2, setH: 18.9 })).toBe('05:12 to 18:54');
  });
});
