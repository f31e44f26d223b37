import { describe, expect, it } from 'vitest';
import type { Radiation } from '../../../shared-types/tour.ts';
import { tourFaults } from '../../../src-main/workbench/tour-faults.ts';
import { coordinates, legFixture, stationFixture, tourFixture } from '../../support/station-fixture.ts';

const stations = [stationFixture('Plain')];
const own = (...kWhM2ADay: number[]): Radiation => ({
  as: 'own',
  kWhM2ADay: [...kWhM2ADay, ...new Array<number>(12 - kWhM2ADay.length).fill(0)],
});
const fieldsOf = (...legs: Parameters<typeof legFixture>[0][]) => {
  const outcome = tourFaults(tourFixture(legs.map((leg) => legFixture(leg))), stations);
  return outcome === null || outcome.ok ? [] : outcome.error.fields;
};

describe('tourFaults()', () => {
  it('names the leg whose station is not in the list', () => {
    expect(fieldsOf({}, { place: { as: 'station', station: 'Gone' } })).toEqual([
      {
        path: 'tour.legs.1.place.station',
        allowed: 'the name of a climate station in the list',
        got: '"Gone"',
      },
    ]);
  });

  it('names each month with more radiation than the sun sends', () => {
    const fields = fieldsOf({ place: coordinates(45, 10), radiation: own(9, 2, 12) });
    expect(fields.map(({ path }) => path)).toEqual([
      'tour.legs.0.radiation.kWhM2ADay.0',
      'tour.legs.0.radiation.kWhM2ADay.2',
    ]);
    // FAO-56 annex 2 table 2.6 between 44 and 46 N: 11.9 MJ/m2 in January is 3.3 kWh/m2.
    expect(fields[0]!.allowed).toMatch(/^at most 3\.3\d kWh\/m² a day/);
    expect(fields[0]!.got).toBe('9');
  });

  it('allows nothing but nothing in polar night', () => {
    expect(fieldsOf({ place: coordinates(90, 0), radiation: own(0.1) })[0]!.allowed).toMatch(/^at most 0 /);
    expect(fieldsOf({ place: coordinates(90, 0), radiation: own(0) })).toEqual([]);
  });

  it('lets any possible tour pass', () => {
    expect(fieldsOf({}, { radiation: own(1.2, 2.1, 3.4, 4.6, 5.8, 6.5) })).toEqual([]);
    expect(fieldsOf({ place: { as: 'station', station: 'Plain' }, radiation: own(3) })).toEqual([]);
  });
});
