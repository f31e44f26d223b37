import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseStations, readStations } from '../../../src-main/catalogue/stations.ts';
import { StationsError } from '../../../src-main/catalogue/stations-error.ts';
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
  readonly lon?: string;
}

/**
 * Day length from the sun's upper edge with refraction: W. C. Forsythe and others, "A model comparison for daylength as a
 * function of latitude and day of year", Ecological Modelling 80 (1995) 87-95, model CBM with p = 0.8333 degrees.
 */
function dayLengthH(latDeg: number, day: number): number {
  const revolution = 0.2163108 + 2 * Math.atan(0.9671396 * Math.tan(0.0086 * (day - 186)));
  const declination = Math.asin(0.39795 * Math.cos(revolution));
  const lat = (latDeg * Math.PI) / 180;
  const edge = Math.sin((0.8333 * Math.PI) / 180) + Math.sin(lat) * Math.sin(declination);
  const cosine = edge / (Math.cos(lat) * Math.cos(declination));
  return 24 - (24 / Math.PI) * Math.acos(Math.min(1, Math.max(-1, cosine)));
}

const firstDays = [1, 32, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335, 366];

/** The mean over the days of a month: at Tromsø the sun comes back within January. */
function longestSunshineH(latDeg: number, month: number): number {
  const [first, next] = [firstDays[month]!, firstDays[month + 1]!];
  const days = Array.from({ length: next - first }, (_, index) => dayLengthH(latDeg, first + index));
  return days.reduce((sum, hours) => sum + hours, 0) / days.length;
}

const polarDay = (): number => 24;

/** A table of one invented place with twelve like months, one of them changed. */
function table(change: Change = {}, months = Array.from({ length: 12 }, (_, index) => index + 1)): string {
  const rows = months.map((month) => {
    const given = change.month === month ? change : {};
    const { sunshine = '6.5', min = '4', max = '15', lat = '46.25', lon = '7.5' } = given;
    return `Midway,Nowhere,None,${lat},${lon},480,${month},${sunshine},${min},${max},invented,invented`;
  });
  return [header, ...rows].join('\n');
}

function faultOf(text: string): string {
  const thrown = thrownBy(() => parseStations(text, longestSunshineH));
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

  it.each(['-0.1', '24.1'])('sunshine of %s hours a day anywhere', (sunshine) => {
    const thrown = thrownBy(() => parseStations(table({ month: 3, sunshine }), () => 30));
    expect(thrown).toMatchObject({
      name: 'StationsError',
      fault: 'sunshine',
      message: `Midway, month 3: ${sunshine} h of sunshine a day; allowed is 0 to 24.`,
    });
  });

  it('sunshine longer than the day of its month', () => {
    const byMonth = (_: number, month: number): number => (month === 11 ? 8.514 : 24);
    const thrown = thrownBy(() => parseStations(table({ month: 12, sunshine: '8.6' }), byMonth));
    expect(thrown).toMatchObject({
      fault: 'sunshine',
      message: 'Midway, month 12: 8.6 h of sunshine a day; allowed is 0 to 8.51.',
    });
  });

  it('sunshine in the polar night', () => {
    const text = table({ month: 1, lat: '80' }).replaceAll(',46.25,', ',80,');
    expect(faultOf(text)).toBe('sunshine: Midway, month 1: 6.5 h of sunshine a day; allowed is 0 to 0.');
  });

  it.each([
    [{ lat: '90.001' }, 'lat_deg is 90.001; allowed is -90 to 90.'],
    [{ lat: '-91' }, 'lat_deg is -91; allowed is -90 to 90.'],
    [{ lon: '180.5' }, 'lon_deg is 180.5; allowed is -180 to 180.'],
    [{ lon: '-360' }, 'lon_deg is -360; allowed is -180 to 180.'],
  ])('a place beyond the globe: %j', (change, message) => {
    expect(faultOf(table({ month: 1, ...change }))).toBe(`position: Midway: ${message}`);
  });

  it('a minimum temperature above the maximum', () => {
    expect(faultOf(table({ month: 7, min: '16' }))).toMatch(
      /^temperatures: Midway, month 7: the minimum 16 °C/,
    );
  });

  it.each([
    [{ min: '' }, 'minimum missing'],
    [{ max: '' }, 'maximum missing'],
  ])('one temperature without the other: %j', (change, message) => {
    expect(faultOf(table({ month: 7, ...change }))).toMatch(
      new RegExp(`^temperatures: Midway, month 7.*${message}`),
    );
  });

  it('a table without a station', () => {
    expect(faultOf(header)).toMatch(/^empty/);
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
    const [station] = parseStations([header_, ...rows.reverse()].join('\n'), polarDay);
    expect(station?.sunshineH).toEqual([1.25, ...Array.from({ length: 11 }, () => 6.5)]);
  });

  it('takes 0 and 24 hours of sunshine, and equal temperatures', () => {
    const dark = parseStations(table({ month: 12, sunshine: '0', min: '-3', max: '-3' }), polarDay);
    const bright = parseStations(table({ month: 6, sunshine: '24' }), polarDay);
    expect([dark[0]?.sunshineH[11], bright[0]?.sunshineH[5], dark[0]?.minDegC[11]]).toEqual([0, 24, -3]);
  });

  it('has null where no temperature was found', () => {
    const [station] = parseStations(table({ month: 4, min: '', max: '' }), polarDay);
    expect([station?.minDegC[3], station?.maxDegC[3], station?.minDegC[4]]).toEqual([null, null, 4]);
  });

  it('takes sunshine as long as the day, and no longer', () => {
    const askedFor: [number, number][] = [];
    const asked = (latDeg: number, month: number): number => {
      askedFor.push([latDeg, month]);
      return 6.5;
    };
    const [station] = parseStations(table(), asked);
    expect(station?.sunshineH[0]).toBe(6.5);
    expect(askedFor).toEqual(Array.from({ length: 12 }, (_, month) => [46.25, month]));
  });

  it.each([
    ['90', '180'],
    ['-90', '-180'],
  ])('takes the end of the globe at %s and %s', (lat, lon) => {
    const [station] = parseStations(table({ month: 1, lat, lon }), polarDay);
    expect([station?.latDeg, station?.lonDeg]).toEqual([Number(lat), Number(lon)]);
  });
});

describe('readStations()', () => {
  const stations = readStations(longestSunshineH);

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

  it('refuses its own table where days are shorter', () => {
    const text = readFileSync(resolve(import.meta.dirname, '../../../db/climate/stations.csv'), 'utf8');
    // Khartoum's sunshine is up to 0.98 of the day's length, as the notes say.
    const shorter = (latDeg: number, month: number): number => longestSunshineH(latDeg, month) * 0.975;
    expect(thrownBy(() => parseStations(text, shorter))).toMatchObject({
      fault: 'sunshine',
      message: expect.stringContaining('Khartoum') as string,
    });
  });

  it('is read once', () => {
    expect(readStations(longestSunshineH)).toBe(stations);
  });
});
