import { describe, expect, it } from 'vitest';
import {
  climateCredit,
  parseStations,
  readStations,
  StationsError,
} from '../../../src-main/catalogue/stations.ts';
import { demoTours } from '../../../db/demo/demo.ts';
import { thrownBy } from './temporary-catalogue.ts';

const header =
  'place,country,region,lat_deg,lon_deg,elev_m,month,sunshine_h_per_day,tmin_c,tmax_c,normals_period,source';

interface Change {
  readonly month?: number;
  readonly sunshine?: string;
  readonly min?: string;
  readonly max?: string;
  readonly lat?: string;
}

/** A table of one invented place with twelve like months, one of them changed. */
function table(change: Change = {}, months = Array.from({ length: 12 }, (_, index) => index + 1)): string {
  const rows = months.map((month) => {
    const { sunshine = '6.5', min = '4', max = '15', lat = '46.25' } = change.month === month ? change : {};
    return `Midway,Nowhere,None,${lat},7.5,480,${month},${sunshine},${min},${max},invented,invented`;
  });
  return [header, ...rows].join('\n');
}

function faultOf(text: string): string {
  const thrown = thrownBy(() => parseStations(text));
  if (!(thrown instanceof StationsError)) throw new Error('parseStations() did not refuse the table');
  return `${thrown.fault}: ${thrown.message}`;
}

describe('parseStations() refuses', () => {
  it('a place that misses a month', () => {
    expect(faultOf(table({}, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]))).toMatch(
      /^months: Midway must have each month/,
    );
  });

  it('a place with a month twice', () => {
    expect(faultOf(table({}, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 11]))).toMatch(/^months/);
  });

  it('two places of one name', () => {
    const once = table();
    expect(faultOf(`${once}\n${once.slice(header.length + 1)}`)).toMatch(/^months/);
  });

  it.each(['-0.1', '24.1'])('sunshine of %s hours a day', (sunshine) => {
    expect(faultOf(table({ month: 3, sunshine }))).toBe(
      `sunshine: Midway, month 3: ${sunshine} h of sunshine a day; allowed is 0 to 24.`,
    );
  });

  it('a minimum temperature above the maximum', () => {
    expect(faultOf(table({ month: 7, min: '16' }))).toMatch(
      /^temperatures: Midway, month 7: the minimum 16 °C/,
    );
  });

  it('a minimum temperature without a maximum', () => {
    expect(faultOf(table({ month: 7, max: '' }))).toMatch(/^temperatures: .*maximum missing/);
  });

  it.each([{ sunshine: '' }, { sunshine: 'much' }, { min: 'cold' }])('what is no number: %j', (change) => {
    expect(faultOf(table({ month: 2, ...change }))).toMatch(/^number: Midway, month 2/);
  });

  it('a latitude that is no number', () => {
    expect(faultOf(table({ month: 1, lat: 'north' }))).toBe(
      'number: Midway, month 1: lat_deg is "north", not a number.',
    );
  });
});

describe('parseStations()', () => {
  it('orders the months, whatever the order of rows', () => {
    const [header_, ...rows] = table({ month: 1, sunshine: '1.25' }).split('\n');
    const [station] = parseStations([header_, ...rows.reverse()].join('\n'));
    expect(station?.sunshineH).toEqual([1.25, ...Array.from({ length: 11 }, () => 6.5)]);
  });

  it('takes 0 and 24 hours of sunshine, and equal temperatures', () => {
    const dark = parseStations(table({ month: 12, sunshine: '0', min: '-3', max: '-3' }));
    const bright = parseStations(table({ month: 6, sunshine: '24' }));
    expect([dark[0]?.sunshineH[11], bright[0]?.sunshineH[5], dark[0]?.minDegC[11]]).toEqual([0, 24, -3]);
  });

  it('has null where no temperature was found', () => {
    const [station] = parseStations(table({ month: 4, min: '', max: '' }));
    expect([station?.minDegC[3], station?.maxDegC[3], station?.minDegC[4]]).toEqual([null, null, 4]);
  });
});

describe('readStations()', () => {
  const stations = readStations();

  it('has the 70 places that the notes beside it name', () => {
    expect(stations).toHaveLength(70);
    expect(new Set(stations.map((station) => station.place)).size).toBe(70);
  });

  it('misses temperatures only where the notes say so', () => {
    const without = stations.filter((station) => station.minDegC.includes(null)).map(({ place }) => place);
    expect(without.sort()).toEqual(['Alice Springs', 'Whitehorse']);
  });

  it('gives the row of a place as the table has it', () => {
    const tashkent = stations.find((station) => station.place === 'Tashkent');
    expect(tashkent).toEqual({
      place: 'Tashkent',
      country: 'Uzbekistan',
      latDeg: 41.258,
      lonDeg: 69.281,
      elevationM: 432,
      sunshineH: [3.8, 4.5, 5.3, 7.2, 9.8, 12.1, 12.4, 11.8, 10, 7.3, 5, 3.4],
      minDegC: [-1.5, 0, 4.8, 9.8, 13.7, 18.1, 19.7, 18.1, 13, 7.8, 4.1, 0],
      maxDegC: [6.9, 9.4, 15.2, 22, 27.5, 33.4, 35.6, 34.7, 29.3, 21.8, 14.9, 8.8],
      source: 'sun=WW2016-monthly; temp=WW2016; pos=ISD-384570',
    });
  });

  it('has every station that the demo names', () => {
    const named = demoTours.flatMap((tour) =>
      tour.legs.flatMap((leg) => (leg.place.as === 'station' ? [leg.place.station] : [])),
    );
    expect(named.filter((place) => !stations.some((station) => station.place === place))).toEqual([]);
  });

  it('lies on the globe', () => {
    const off = stations.filter(({ latDeg, lonDeg }) => Math.abs(latDeg) > 90 || Math.abs(lonDeg) > 180);
    expect(off).toEqual([]);
  });

  it('is read once', () => {
    expect(readStations()).toBe(stations);
  });
});

describe('climateCredit', () => {
  it('credits the sources as their terms ask', () => {
    for (const source of ['Wikipedia contributors, CC BY-SA', 'NOAA', 'DSSAT'])
      expect(climateCredit).toContain(source);
  });
});
