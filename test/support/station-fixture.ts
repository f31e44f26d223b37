import type { Station } from '../../shared-types/climate.ts';
import { usualBicycle, type Leg, type Place, type Tour } from '../../shared-types/tour.ts';

const allMonths = <T>(value: T): T[] => new Array<T>(12).fill(value);

/** An invented climate station. */
export function stationFixture(place: string, changes: Partial<Station> = {}): Station {
  return {
    place,
    country: 'Inventia',
    latDeg: 45,
    lonDeg: 10,
    elevationM: 200,
    sunshineH: allMonths(6),
    minDegC: allMonths(8),
    maxDegC: allMonths(18),
    source: 'sun=invented; temp=invented; pos=invented',
    ...changes,
  };
}

export function coordinates(latDeg: number, lonDeg: number, elevationM = 200): Place {
  return { as: 'coordinates', latDeg, lonDeg, elevationM };
}

/** An invented leg of a week: six hours of riding, an hour of lunch. */
export function legFixture(changes: Partial<Leg> = {}): Leg {
  return {
    label: 'Invented leg',
    days: 7,
    place: coordinates(45, 10),
    radiation: { as: 'sunshine' },
    terrain: { as: 'class', terrainClass: 'rolling' },
    wind: { as: 'calm' },
    ridingHours: 6,
    nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
    dayStops: [{ label: 'Lunch', minutes: 60, outlets: 0, chance: 0 }],
    ...changes,
  };
}

export function tourFixture(legs: readonly Leg[], startDate = '2027-05-03'): Tour {
  return {
    id: 'invented-tour',
    label: 'Invented tour',
    startDate,
    legs: [...legs],
    leftAtHome: [],
    riderMassKg: 75,
    bicycleMassKg: 30,
    riderW: 100,
    bicycle: usualBicycle,
    notes: '',
  };
}
