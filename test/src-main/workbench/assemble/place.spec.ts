import { describe, expect, it } from 'vitest';
import type { Radiation } from '../../../../shared-types/tour.ts';
import { settlePlace } from '../../../../src-main/workbench/assemble/place.ts';
import { expectNear } from '../../../support/near.ts';
import { coordinates, stationFixture } from '../../../support/station-fixture.ts';

const sunshine = { as: 'sunshine' } as const;
const none = new Array<null>(12).fill(null);
const plain = stationFixture('Plain');
const far = stationFixture('Far', { latDeg: 60, lonDeg: 30, elevationM: 1200 });

describe('settlePlace()', () => {
  it('has no answer for a station that is not in the list, or for no list', () => {
    expect(settlePlace({ as: 'station', station: 'Gone' }, sunshine, [plain])).toBeNull();
    expect(settlePlace(coordinates(45, 10), sunshine, [])).toBeNull();
  });

  it('takes a named station where it stands', () => {
    const settled = settlePlace({ as: 'station', station: 'Far' }, sunshine, [plain, far])!;
    expect(settled).toMatchObject({ station: far, stationKm: 0, stationHigherM: 0 });
    expect(settled.climate).toMatchObject({ latDeg: 60, elevationM: 1200 });
  });

  it('takes the nearest station across the date line', () => {
    const [west, east] = [
      stationFixture('West', { latDeg: 52, lonDeg: 172 }),
      stationFixture('East', { latDeg: 52, lonDeg: -178 }),
    ];
    const settled = settlePlace(coordinates(52, 179.5), sunshine, [west, east])!;
    expect(settled.station.place).toBe('East');
    // 2.5 degrees of longitude at 52 degrees north: 2.5 x 111.2 km x cos 52.
    expectNear(settled.stationKm, 171, 2, 'distance, km');
  });

  it.each([-90, 90])('settles the pole, latitude %d', (latDeg) => {
    const settled = settlePlace(coordinates(latDeg, 0), sunshine, [plain, far])!;
    expect([...settled.climate.clearness, ...settled.climate.minDegC].every(Number.isFinite)).toBe(true);
    expect(settled.stationKm).toBeGreaterThan(1000);
  });

  it('moves temperatures to the height of the leg', () => {
    const settled = settlePlace(coordinates(45, 10, 1200), sunshine, [plain])!;
    expectNear(settled.climate.minDegC[0]!, 8 - 6.5, 1e-9, 'minimum, degC');
    expect(settled.stationHigherM).toBe(-1000);
  });

  it('takes the temperatures of the nearest station that has some', () => {
    const bare = stationFixture('Bare', { minDegC: none, maxDegC: none, elevationM: 500 });
    const settled = settlePlace({ as: 'station', station: 'Bare' }, sunshine, [bare, far, plain])!;
    expect(settled.station).toBe(bare);
    expect(settled.warmth).toBe(plain);
    // From 200 m up to 500 m at 6.5 K/km.
    expectNear(settled.climate.maxDegC[5]!, 18 - 1.95, 1e-9, 'maximum, degC');
  });

  it('takes the sky of the station and the latitude of the leg', () => {
    const near = settlePlace(coordinates(45, 10), sunshine, [plain])!;
    const north = settlePlace(coordinates(50, 10), sunshine, [plain])!;
    expect(north.climate.clearness).toEqual(near.climate.clearness);
    expect(north.climate.latDeg).toBe(50);
  });

  it('takes the rider’s own radiation in place of sunshine', () => {
    const own: Radiation = { as: 'own', kWhM2ADay: new Array<number>(12).fill(2) };
    const settled = settlePlace(coordinates(45, 10), own, [plain])!;
    // FAO-56 annex 2 table 2.6 between 44 and 46 N: 40.65 MJ/m2 in July, so 2 kWh/m2 is 0.177 of it.
    expectNear(settled.climate.clearness[6]!, 7.2 / 40.65, 0.003, 'clearness of July');
  });
});
