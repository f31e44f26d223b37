/** A point on the Earth; east and north positive. */
export interface GeoPoint {
  readonly latDeg: number;
  readonly lonDeg: number;
}

const radPerDeg = Math.PI / 180;
/** Mean radius of the Earth, km (IUGG). */
const earthRadiusKm = 6371.0088;

/** Distance over the surface between two places, km (haversine: exact for close places, safe for far ones). */
export function greatCircleKm(a: GeoPoint, b: GeoPoint): number {
  const latHalf = ((b.latDeg - a.latDeg) / 2) * radPerDeg;
  const lonHalf = ((b.lonDeg - a.lonDeg) / 2) * radPerDeg;
  const chord =
    Math.sin(latHalf) ** 2 +
    Math.cos(a.latDeg * radPerDeg) * Math.cos(b.latDeg * radPerDeg) * Math.sin(lonHalf) ** 2;
  return 2 * earthRadiusKm * Math.asin(Math.min(1, Math.sqrt(chord)));
}

/** The one of `places` nearest to a point; undefined when there are none. The first of equals. */
export function nearestTo<P extends GeoPoint>(point: GeoPoint, places: readonly P[]): P | undefined {
  let nearest: P | undefined;
  let least = Infinity;
  for (const place of places) {
    const km = greatCircleKm(point, place);
    if (km < least) {
      nearest = place;
      least = km;
    }
  }
  return nearest;
}
