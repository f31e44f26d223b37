import { describe, expect, it } from 'vitest';
import type { Station } from '../../../../shared-types/climate.ts';
import { stationOf } from '../../../../src-renderer/views/tours/place-station.ts';

const station = (place: string, latDeg: number, lonDeg: number): Station => ({
  place,
  country: 'Nowhere',
  latDeg,
  lonDeg,
  elevationM: 300,
  sunshineH: [],
  minDegC: [],
  maxDegC: [],
  source: 'invented',
});
const stations = [station('East', 0, 20), station('West', 0, 5)];
const at = (latDeg: number, lonDeg: number, elevationM = 300) =>
  ({ as: 'coordinates', latDeg, lonDeg, elevationM }) as const;

describe('stationOf()', () => {
  it('is none while a latitude is still to be typed', () => {
    expect(stationOf(at(Number.NaN, 6), stations)).toBeNull();
  });

  it('is none where no station is known by the name', () => {
    expect(stationOf({ as: 'station', station: 'Elsewhere' }, stations)).toBeNull();
    expect(stationOf(at(0, 6), [])).toBeNull();
  });

  it('stands at the leg that names it', () => {
    const named = stationOf({ as: 'station', station: 'East' }, stations);
    expect(named).toEqual({ place: 'East', country: 'Nowhere', km: 0, higherM: 0 });
  });

  // One degree of the equator is 1/360 of 2 pi x 6371.0088 km (IUGG mean radius): 111.195 km.
  it('is the nearest, with its distance and its height', () => {
    const nearest = stationOf(at(0, 6, 1000), stations);
    expect(nearest).toMatchObject({ place: 'West', higherM: -700 });
    expect(nearest?.km).toBeCloseTo(111.195, 3);
  });
});
