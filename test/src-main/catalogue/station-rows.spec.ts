import { describe, expect, it } from 'vitest';
import { numberOf, numberOrNull, stationRows } from '../../../src-main/catalogue/station-rows.ts';
import { StationsError } from '../../../src-main/catalogue/stations-error.ts';
import { thrownBy } from './temporary-catalogue.ts';

const header = 'place,country,lat_deg,lon_deg,elev_m,month,sunshine_h_per_day,tmin_c,tmax_c,source';
const january = 'Midway,Nowhere,46.25,7.5,480,1,2.5,,6,invented';

function faultOf(work: () => unknown): string {
  const thrown = thrownBy(work);
  if (!(thrown instanceof StationsError)) throw new Error('the table was not refused');
  return `${thrown.fault}: ${thrown.message}`;
}

describe('stationRows() refuses', () => {
  it.each(['', '\n\n', header, `${header}\n`])('a table without a station: %j', (text) => {
    expect(faultOf(() => stationRows(text))).toBe('empty: The station table has no station.');
  });

  it('a table that misses columns, and names them', () => {
    const text = `${header}\n${january}`.replace('tmin_c', 'min').replace('source', 'origin');
    expect(faultOf(() => stationRows(text))).toBe('columns: The station table misses: tmin_c, source.');
  });

  it('a text that is no station table', () => {
    expect(faultOf(() => stationRows('Packing list\ntent'))).toMatch(/^columns: .* misses: place, country/);
  });

  it('a row that breaks off', () => {
    const text = [header, january, 'Midway,Nowhere,46.25'].join('\n');
    expect(faultOf(() => stationRows(text))).toMatch(
      /^columns: The station table, row 2 below the header: Too few/,
    );
  });

  it('a row with a field too many', () => {
    expect(faultOf(() => stationRows(`${header}\n${january},more`))).toMatch(/^columns: .*row 1 .*Too many/);
  });

  it('a row without a place', () => {
    const text = `${header}\n${january.replace('Midway', ' ')}`;
    expect(faultOf(() => stationRows(text))).toBe('place: The station table has a row without a place.');
  });
});

describe('stationRows()', () => {
  it('gives the cells as text by their column', () => {
    expect(stationRows(`${header}\n${january}\n\n`)).toEqual([
      {
        place: 'Midway',
        country: 'Nowhere',
        lat_deg: '46.25',
        lon_deg: '7.5',
        elev_m: '480',
        month: '1',
        sunshine_h_per_day: '2.5',
        tmin_c: '',
        tmax_c: '6',
        source: 'invented',
      },
    ]);
  });

  it('takes a table with other line ends and one place only', () => {
    expect(stationRows(`${header}\r\n${january}\r\n`)[0]?.source).toBe('invented');
  });
});

describe('a cell of a row', () => {
  const [row] = stationRows(`${header}\n${january}`);

  it.each(['warm', '', ' ', 'NaN', 'Infinity', '6 °C'])('is no number: %j', (text) => {
    expect(faultOf(() => numberOf({ ...row!, tmax_c: text }, 'tmax_c'))).toBe(
      `number: Midway, month 1: tmax_c is "${text}", not a number.`,
    );
  });

  it('that may be empty is still no word', () => {
    expect(faultOf(() => numberOrNull({ ...row!, tmin_c: 'cold' }, 'tmin_c'))).toMatch(/^number/);
  });

  it('is a number, or null when empty', () => {
    expect([numberOf(row!, 'lat_deg'), numberOrNull(row!, 'tmax_c'), numberOrNull(row!, 'tmin_c')]).toEqual([
      46.25,
      6,
      null,
    ]);
  });
});
