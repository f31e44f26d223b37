import type { Station } from '../../../shared-types/climate.ts';
import { greatCircleKm, nearestTo } from '../../../shared-types/great-circle.ts';
import type { Place, Radiation } from '../../../shared-types/tour.ts';
import type { PlaceClimate } from '../../model/flow/tour-sun.ts';
import { atHeight } from '../../model/sun/air-temperature.ts';
import { clearnessOfRadiation, clearnessOfSunshine } from '../../model/sun/monthly-clearness.ts';

/** A place with the station whose climate it is given. */
export interface SettledPlace {
  readonly climate: PlaceClimate;
  readonly lonDeg: number;
  readonly station: Station;
  /** From the place to the station. */
  readonly stationKm: number;
  readonly stationHigherM: number;
  /** The nearest station with temperatures: mostly the same one. */
  readonly warmth: Station;
  readonly warmthKm: number;
}

/** Gives a place the sky of its named or nearest station, or the rider's own, and temperatures moved to its height. */
export function settlePlace(
  place: Place,
  radiation: Radiation,
  stations: readonly Station[],
): SettledPlace | null {
  const spot = spotOf(place, stations);
  if (spot === undefined) return null;
  const station = place.as === 'coordinates' ? nearestTo(spot, stations) : (spot as Station);
  if (station === undefined) return null;
  const warmth = hasTemperatures(station)
    ? station
    : (nearestTo(spot, stations.filter(hasTemperatures)) ?? station);
  const moved = (monthly: readonly (number | null)[]): number[] =>
    monthly.map((degC) => atHeight(degC ?? 0, warmth.elevationM, spot.elevationM));
  const climate = {
    latDeg: spot.latDeg,
    elevationM: spot.elevationM,
    clearness:
      radiation.as === 'own'
        ? clearnessOfRadiation(radiation.kWhM2ADay, spot.latDeg)
        : clearnessOfSunshine(station.sunshineH, station.latDeg),
    minDegC: moved(warmth.minDegC),
    maxDegC: moved(warmth.maxDegC),
  };
  return {
    climate,
    lonDeg: spot.lonDeg,
    station,
    stationKm: greatCircleKm(spot, station),
    stationHigherM: station.elevationM - spot.elevationM,
    warmth,
    warmthKm: greatCircleKm(spot, warmth),
  };
}

type Spot = Pick<Station, 'latDeg' | 'lonDeg' | 'elevationM'>;

/** Where a place lies; undefined when it names a station that is not in the list. */
export function spotOf(place: Place, stations: readonly Station[]): Spot | undefined {
  return place.as === 'coordinates' ? place : stations.find((each) => each.place === place.station);
}

function hasTemperatures(station: Station): boolean {
  return !station.minDegC.includes(null);
}
