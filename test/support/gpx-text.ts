import { readFileSync } from 'node:fs';

/** Two tracks of our own making, in whole figures that can be reckoned by hand; see the files. */
const read = (name: string): string => readFileSync(new URL(`./gpx/${name}`, import.meta.url), 'utf8');

/**
 * With times: 5 km up 2 % at 18 km/h, a stop of 2 min, 2.5 km down 4 % at 36 km/h; the recorder off for 30 min and 500 m; then
 * 3 km of level road at 21.6 km/h as a segment of its own.
 */
export const valleyRide = (): string => read('valley-ride.gpx');

/** A route without times: 3 km up 3 % and 3 km down again, with 6 of 61 heights missing on the slopes. */
export const passRoute = (): string => read('pass-route.gpx');

export const gpx = (body: string, uri = 'http://www.topografix.com/GPX/1/1'): string =>
  `<?xml version="1.0"?><gpx version="1.1" creator="test" xmlns="${uri}">${body}</gpx>`;

export const trackPoint = (lat: string, lon: string, inner = ''): string =>
  `<trkpt lat="${lat}" lon="${lon}">${inner}</trkpt>`;

export const segmentsGpx = (...segments: readonly (readonly string[])[]): string =>
  gpx(`<trk>${segments.map((points) => `<trkseg>${points.join('')}</trkseg>`).join('')}</trk>`);
