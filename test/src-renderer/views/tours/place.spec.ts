import { describe, expect, it } from 'vitest';
import type { Station } from '../../../../shared-types/climate.ts';
import { place } from '../../../../shared-types/tour.ts';
import { placeAs, placeOfTrack } from '../../../../src-renderer/views/tours/place.ts';

const station = (name: string, latDeg: number, lonDeg: number): Station => ({
  place: name,
  country: 'Nowhere',
  latDeg,
  lonDeg,
  elevationM: 300,
  sunshineH: [],
  minDegC: [],
  maxDegC: [],
  source: 'invented',
});

const stations = [station('East', 45, 20), station('West', 45, 5), station('Far east', 0, 179.5)];
const at = (latDeg: number, lonDeg: number) =>
  ({ as: 'coordinates', latDeg, lonDeg, elevationM: 0 }) as const;

describe('placeAs()', () => {
  it('keeps the coordinates when there is no station to turn to', () => {
    expect(placeAs('station', at(45, 6), [])).toEqual(at(45, 6));
  });

  it('gives usable coordinates for a station nobody knows', () => {
    const turned = placeAs('coordinates', { as: 'station', station: 'Unknown' }, stations);
    expect(place.safeParse(turned).success).toBe(true);
    expect(turned.as).toBe('coordinates');
  });

  it('leaves a place alone that is given that way already', () => {
    const given = at(45, 6);
    expect(placeAs('coordinates', given, stations)).toBe(given);
  });

  it('finds the station nearest to the coordinates', () => {
    expect(placeAs('station', at(45, 6), stations)).toEqual({ as: 'station', station: 'West' });
    expect(placeAs('station', at(45, 18), stations)).toEqual({ as: 'station', station: 'East' });
  });

  it('looks across the date line', () => {
    expect(placeAs('station', at(0, -179.5), stations)).toEqual({ as: 'station', station: 'Far east' });
  });

  it('takes the coordinates of the station', () => {
    expect(placeAs('coordinates', { as: 'station', station: 'East' }, stations)).toEqual({
      as: 'coordinates',
      latDeg: 45,
      lonDeg: 20,
      elevationM: 300,
    });
  });
});

describe('placeOfTrack()', () => {
  it('leaves out decimals that no sky tells apart', () => {
    const fine = { meanLatDeg: -44.500049999, meanLonDeg: 7.123456, meanElevationM: 1200.6 };
    expect(placeOfTrack(fine, at(0, 0), [])).toEqual({
      as: 'coordinates',
      latDeg: -44.5,
      lonDeg: 7.1235,
      elevationM: 1201,
    });
  });

  const centre = { meanLatDeg: 44.5, meanLonDeg: 7.25, meanElevationM: 1200 };
  const lying = { as: 'coordinates', latDeg: 44.5, lonDeg: 7.25 };

  it('keeps the height of the leg where the track has none', () => {
    const without = { ...centre, meanElevationM: null };
    const given = { ...at(45, 6), elevationM: 850 };
    expect(placeOfTrack(without, given, stations)).toEqual({ ...lying, elevationM: 850 });
    const byStation = { as: 'station', station: 'East' } as const;
    expect(placeOfTrack(without, byStation, stations)).toEqual({ ...lying, elevationM: 300 });
  });

  it('takes the middle and the mean height of the track', () => {
    expect(placeOfTrack(centre, at(45, 6), stations)).toEqual({ ...lying, elevationM: 1200 });
  });
});
