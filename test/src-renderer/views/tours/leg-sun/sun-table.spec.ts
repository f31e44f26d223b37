import { describe, expect, it } from 'vitest';
import { sunTable } from '../../../../../src-renderer/views/tours/leg-sun/sun-table.ts';
import { toCsv } from '../../../../../src-renderer/parts/charts/chart-table.ts';
import { legSun, monthDates, panelSun, sunPeriod } from '../../../support/fake-leg-sun.ts';

const sun = legSun();
const panels = [panelSun('a', '20 W panel', [30, 45, 60]), panelSun('b', '6 W panel', [9, 12, 15])];

describe('sunTable()', () => {
  it('leaves a figure empty that a panel does not have', () => {
    const { rows } = sunTable(sun, 'day', [panelSun('a', '20 W panel', [30])]);
    const csv = toCsv({ columns: [], rows: [rows[2]!] });
    expect(csv.trim()).toMatch(/,,,$/);
  });

  it('says in words where the sun does not rise', () => {
    const polar = ['up', 'down'].map((as) => sunPeriod('2027-06-21', { sun: { as: as as 'up' } }));
    const { rows } = sunTable({ periods: polar }, 'day', []);
    expect(rows.map((row) => row[1])).toEqual(['stays up', 'stays down']);
  });

  it('has as many cells in each row as columns', () => {
    for (const some of [[], panels.slice(0, 1), panels]) {
      const { columns, rows } = sunTable(sun, 'day', some);
      expect(columns).toHaveLength(8 + 3 * some.length);
      expect(new Set(rows.map((row) => row.length))).toEqual(new Set([columns.length]));
    }
  });

  it('gives every figure of a day', () => {
    const { columns, rows } = sunTable(sun, 'day', panels);
    const at = (column: string) => rows[1]![columns.indexOf(column)];
    expect([at('Date'), at('Sunrise'), at('Sunset')]).toEqual(['2027-05-04', '05:12', '18:54']);
    expect(at('Radiation, kWh/m²')).toBe(5);
    expect([at('Air lowest, °C'), at('Air highest, °C')]).toEqual([8, 21]);
    expect([at('20 W panel, Wh'), at('20 W panel, 10 of 100 less, Wh')]).toEqual([45, 15]);
    expect([at('6 W panel, Wh'), at('6 W panel, 90 of 100 less, Wh')]).toEqual([12, 18]);
  });

  it('names months where the periods are months', () => {
    const { columns, rows } = sunTable(
      { periods: monthDates.map((date) => sunPeriod(date)) },
      'month',
      [],
      'en-GB',
    );
    expect(columns[0]).toBe('Month');
    expect(rows.map(([name]) => name).slice(0, 3)).toEqual(['Jan', 'Feb', 'Mar']);
  });
});
