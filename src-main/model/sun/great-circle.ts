import { radPerDeg } from '../angle.ts';

/** Mean radius of the Earth, km (IUGG). */
const earthRadiusKm = 6371.0088;

/** Distance over the surface between two places, km (haversine: exact for close places, safe for far ones). */
export function greatCircleKm(
  a: { readonly latDeg: number; readonly lonDeg: number },
  b: { readonly latDeg: number; readonly lonDeg: number },
): number {
  const latHalf = ((b.latDeg - a.latDeg) / 2) * radPerDeg;
  const lonHalf = ((b.lonDeg - a.lonDeg) / 2) * radPerDeg;
  const chord =
    Math.sin(latHalf) ** 2 +
    Math.cos(a.latDeg * radPerDeg) * Math.cos(b.latDeg * radPerDeg) * Math.sin(lonHalf) ** 2;
  return 2 * earthRadiusKm * Math.asin(Math.min(1, Math.sqrt(chord)));
}
