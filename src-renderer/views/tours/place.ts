import type { Station } from '../../../shared-types/climate.ts';
import { nearestTo } from '../../../shared-types/great-circle.ts';
import type { Place } from '../../../shared-types/tour.ts';
import type { TrackProfile } from '../../../shared-types/track.ts';

/** The same place given the other way: a station by its coordinates, coordinates by the station nearest to them. */
export function placeAs(as: Place['as'], place: Place, stations: readonly Station[]): Place {
  if (as === place.as) return place;
  return place.as === 'station' ? coordinatesOf(place.station, stations) : stationNear(place, stations);
}

type Coordinates = Extract<Place, { as: 'coordinates' }>;

function coordinatesOf(name: string, stations: readonly Station[]): Coordinates {
  const station = stations.find(({ place }) => place === name);
  const { latDeg = 45, lonDeg = 10, elevationM = 200 } = station ?? {};
  return { as: 'coordinates', latDeg, lonDeg, elevationM };
}

function stationNear(place: Coordinates, stations: readonly Station[]): Place {
  const nearest = nearestTo(place, stations);
  return nearest === undefined ? place : { as: 'station', station: nearest.place };
}

type Centre = Pick<TrackProfile, 'meanLatDeg' | 'meanLonDeg' | 'meanElevationM'>;

/** About 10 m on the ground: no sky tells places closer together apart. */
const coordinateDecimals = 4;

/** Where a track lies, its height in whole metres; one without heights leaves the leg at the height it has. */
export function placeOfTrack(
  { meanLatDeg, meanLonDeg, meanElevationM }: Centre,
  place: Place,
  stations: readonly Station[],
): Place {
  const elevationM = meanElevationM === null ? heightOf(place, stations) : Math.round(meanElevationM);
  return { as: 'coordinates', latDeg: rounded(meanLatDeg), lonDeg: rounded(meanLonDeg), elevationM };
}

function rounded(deg: number): number {
  return Number(deg.toFixed(coordinateDecimals));
}

function heightOf(place: Place, stations: readonly Station[]): number {
  return (place.as === 'station' ? coordinatesOf(place.station, stations) : place).elevationM;
}
