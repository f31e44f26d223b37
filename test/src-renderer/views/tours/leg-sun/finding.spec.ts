import { describe, expect, it } from 'vitest';
import {
  courseFinding,
  radiationText,
  sunFinding,
} from '../../../../../src-renderer/views/tours/leg-sun/finding.ts';
import { wattHours } from '../../../../../shared-types/figures.ts';
import { expected, legSun, monthDates, panelSun, sunPeriod } from '../../../support/fake-leg-sun.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const finding = (change: Parameters<typeof legSun>[0]): string => {
  const sun = legSun(change);
  return plain(sunFinding(sun, sun.periods, 'en-GB'));
};

describe('sunFinding()', () => {
  it('says that the sun stays down before all else', () => {
    expect(finding({ aimedOverFlat: null })).toBe('The sun stays down all through this leg');
    expect(finding({ aimedOverFlat: null, panels: [] })).toBe('The sun stays down all through this leg');
  });

  it('gives the light where no panel is in the inventory', () => {
    const periods = [4, 6].map((mean) => sunPeriod('2027-05-03', { radiationKWhM2: expected(mean) }));
    expect(finding({ panels: [], periods })).toBe(
      'The sun gives about 5.0 kWh/m² a day; no panel is in the inventory',
    );
  });

  it('says plainly that a packed panel gives nothing', () => {
    const panels = [panelSun('a', '20 W panel', [0, 0])];
    expect(finding({ panels })).toBe('20 W panel gives nothing as it lies here');
  });

  it('gives a usual day and a dull week of the first panel', () => {
    const panels = [
      { ...panelSun('a', '20 W panel', [40]), usualDayWh: 41.2, dullWeekWh: 17.4 },
      panelSun('b', '6 W panel', [10]),
    ];
    expect(finding({ panels })).toBe('20 W panel gives about 41 Wh a day; in a dull week 17 Wh');
  });
});

const days = ['2027-05-03', '2027-05-04', '2027-05-05'].map((date) => ({ date }));
const course = (means: readonly number[]): string =>
  plain(courseFinding(days, means, { by: 'day', text: wattHours, locale: 'en-GB' }));

describe('courseFinding()', () => {
  // Drawn histories differ by chance: days a few Wh apart are no course.
  it('makes no course out of chance', () => {
    expect(course([50, 47, 52])).toBe('On average 50 Wh a day all through');
    expect(course([0, 0, 0])).toBe('On average 0 Wh a day all through');
  });

  it('gives the least and the greatest with their days', () => {
    expect(course([35, 28, 41])).toBe('From 28 Wh a day on 4 May to 41 Wh on 5 May');
  });

  it('names the first of days that are alike', () => {
    expect(course([28, 28, 41])).toBe('From 28 Wh a day on 3 May to 41 Wh on 5 May');
  });

  it('names months where the bars are months', () => {
    const year = monthDates.map((date) => ({ date }));
    const means = [1, 2, 3, 4, 5, 5.6, 5, 4, 3, 2, 1, 0.4];
    const text = courseFinding(year, means, { by: 'month', text: radiationText, locale: 'en-GB' });
    expect(plain(text)).toBe('From 0.4 kWh/m² a day in December to 5.6 kWh/m² in June');
  });

  it('says nothing odd where there is no bar', () => {
    expect(plain(courseFinding([], [], { by: 'day', text: wattHours, locale: 'en-GB' }))).toBe(
      'On average 0 Wh a day all through',
    );
  });
});
