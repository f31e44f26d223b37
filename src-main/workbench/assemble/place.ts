import type { Station } from '../../../shared-types/climate.ts';
import { greatCircleKm, nearestTo } from '../../../shared-types/great-circle.ts';
import type { Place } from '../../../shared-types/tour.ts';
import { atHeight } from '../../model/sun/air-temperature.ts';
import { monthlyClearness } from '../../model/sun/daily-radiation.ts';
import type { PlaceClimate } from '../../model/sun/day-light.ts';

/** A place with the station whose sky it is given. */
export interface SettledPlace {
  readonly climate: PlaceClimate;
  readonly elevationM: number;
  readonly meanDegC: number;
  readonly station: Station;
  /** From the place to the station. */
  readonly stationKm: number;
  readonly stationHigherM: number;
}

/** Gives a place the sky of its named or nearest station, and temperatures moved to its height. */
export function settlePlace(place: Place, stations: readonly Station[]): SettledPlace | null {
  const spot = place.as === 'coordinates' ? place : stations.find((each) => each.place === place.station);
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
    clearness: monthlyClearness(station.sunshineH, station.latDeg),
    minDegC: moved(warmth.minDegC),
    maxDegC: moved(warmth.maxDegC),
  };
  return {
    climate,
    elevationM: spot.elevationM,
    meanDegC: mean([...climate.minDegC, ...climate.maxDegC]),
    station,
    stationKm: greatCircleKm(spot, station),
    stationHigherM: station.elevationM - spot.elevationM,
  };
}

function hasTemperatures(station: Station): boolean {
  return !station.minDegC.includes(null);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
