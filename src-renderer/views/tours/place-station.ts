import type { Station } from '../../../shared-types/climate.ts';
import { greatCircleKm, nearestTo } from '../../../shared-types/great-circle.ts';
import type { Place } from '../../../shared-types/tour.ts';
import type { SeenStation } from './station-text.ts';

/** The station a place takes its climate from; null while there is none, or the coordinates are no numbers. */
export function stationOf(place: Place, stations: readonly Station[]): SeenStation | null {
  if (place.as === 'station') {
    const named = stations.find((each) => each.place === place.station);
    return named === undefined ? null : { place: named.place, country: named.country, km: 0, higherM: 0 };
  }
  const nearest = nearestTo(place, stations);
  if (nearest === undefined) return null;
  return {
    place: nearest.place,
    country: nearest.country,
    km: greatCircleKm(place, nearest),
    higherM: nearest.elevationM - place.elevationM,
  };
}
