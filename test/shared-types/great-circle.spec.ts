import { describe, expect, it } from 'vitest';
import { greatCircleKm, nearestTo, type GeoPoint } from '../../shared-types/great-circle.ts';
import { expectNear } from '../support/near.ts';

describe('greatCircleKm()', () => {
  it('is nothing from a place to itself', () => {
    expect(greatCircleKm({ latDeg: 12, lonDeg: 34 }, { latDeg: 12, lonDeg: 34 })).toBe(0);
  });
  it('is a quarter of the circumference from pole to equator', () => {
    // Mean circumference of the Earth 40,030 km (IUGG mean radius 6371.0088 km).
    expectNear(greatCircleKm({ latDeg: 90, lonDeg: 0 }, { latDeg: 0, lonDeg: 77 }), 40_030.2 / 4, 0.1, 'km');
  });
  it('goes the short way over the date line', () => {
    expectNear(greatCircleKm({ latDeg: 0, lonDeg: 179.5 }, { latDeg: 0, lonDeg: -179.5 }), 111.2, 0.1, 'km');
  });
});

describe('nearestTo()', () => {
  const west = { latDeg: 0, lonDeg: 170 };
  const east = { latDeg: 0, lonDeg: -179 };
  it('finds none among none', () => {
    const none: readonly GeoPoint[] = [];
    expect(nearestTo(west, none)).toBeUndefined();
  });
  it('looks over the date line', () => {
    expect(nearestTo({ latDeg: 0, lonDeg: 179 }, [west, east])).toBe(east);
  });
});
