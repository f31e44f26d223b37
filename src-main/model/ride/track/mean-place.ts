import type { GeoPoint } from '../../../../shared-types/great-circle.ts';
import type { PointStore } from './point-store.ts';
import type { RiddenTrack } from './ridden-track.ts';

const fullTurnDeg = 360;

/** Turns a difference or sum of longitudes into -180..180. */
export function shortWayDeg(lonDeg: number): number {
  return lonDeg - fullTurnDeg * Math.round(lonDeg / fullTurnDeg);
}

/**
 * Mean latitude and longitude over the ridden distance. Longitudes are followed from point to point the short way, so that a
 * track over the 180th meridian has its mean there and not on the other side of the Earth.
 */
export function meanPlace(points: PointStore, { alongKm, distanceKm }: RiddenTrack): GeoPoint {
  let latKm = 0;
  let lonKm = 0;
  let lonDeg = points.lonDeg[0]!;
  for (let index = 1; index < points.count; index += 1) {
    const km = alongKm[index]! - alongKm[index - 1]!;
    const eastDeg = shortWayDeg(points.lonDeg[index]! - points.lonDeg[index - 1]!);
    latKm += km * (points.latDeg[index - 1]! + points.latDeg[index]!) * 0.5;
    lonKm += km * (lonDeg + eastDeg * 0.5);
    lonDeg += eastDeg;
  }
  return { latDeg: latKm / distanceKm, lonDeg: shortWayDeg(lonKm / distanceKm) };
}
