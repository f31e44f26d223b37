import type { Station } from '../../../shared-types/climate.ts';
import type { Place } from '../../../shared-types/tour.ts';

const degToRad = Math.PI / 180;

/** The same place given the other way: a station by its coordinates, coordinates by the station nearest to them. */
export function placeAs(as: Place['as'], place: Place, stations: readonly Station[]): Place {
  if (as === place.as) return place;
  return place.as === 'station' ? coordinatesOf(place.station, stations) : stationNear(place, stations);
}

type Coordinates = Extract<Place, { as: 'coordinates' }>;

function coordinatesOf(name: string, stations: readonly Station[]): Place {
  const station = stations.find(({ place }) => place === name);
  const { latDeg = 45, lonDeg = 10, elevationM = 200 } = station ?? {};
  return { as: 'coordinates', latDeg, lonDeg, elevationM };
}

function stationNear(place: Coordinates, stations: readonly Station[]): Place {
  const [nearest] = stations.toSorted((one, other) => apart(place, one) - apart(place, other));
  return nearest === undefined ? place : { as: 'station', station: nearest.place };
}

/** The angle between two points on the sphere, radians, by the spherical law of cosines: good enough to tell which is nearer. */
function apart(one: Pick<Station, 'latDeg' | 'lonDeg'>, other: Pick<Station, 'latDeg' | 'lonDeg'>): number {
  const [lat1, lat2] = [one.latDeg * degToRad, other.latDeg * degToRad];
  const across = (one.lonDeg - other.lonDeg) * degToRad;
  const cosine = Math.sin(lat1) * Math.sin(lat2) + Math.cos(lat1) * Math.cos(lat2) * Math.cos(across);
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}
