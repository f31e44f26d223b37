import sax from 'sax';
import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import type { TrackPoint } from '../model/ride/track.ts';

/** Namespaces of GPX 1.1 and its predecessor. */
const gpxNamespace = /^http:\/\/www\.topografix\.com\/GPX\/1\/[01]$/;
/** More points than this are refused: a day at one a second is 86,400. */
const mostPoints = 500_000;

class Unreadable extends Error {}

/**
 * Reads the points of a GPX track or route, segment by segment. Strict XML, no external entities, no document type.
 *
 * @returns `unreadable` with the line where the file stops making sense
 */
export function readGpx(text: string): Outcome<readonly (readonly TrackPoint[])[]> {
  const segments: TrackPoint[][] = [];
  try {
    collectPoints(text, segments);
  } catch (fault) {
    if (!(fault instanceof Unreadable)) throw fault;
    return failure('unreadable', `This is not a GPX track that can be read: ${fault.message}.`);
  }
  const points = segments.reduce((sum, segment) => sum + segment.length, 0);
  return points < 2
    ? failure('unreadable', 'This GPX file holds no track or route of at least two points.')
    : success(segments);
}

interface OpenPoint {
  readonly latDeg: number;
  readonly lonDeg: number;
  elevationM: number | null;
}

function collectPoints(text: string, segments: TrackPoint[][]): void {
  const xml = sax.parser(true, { xmlns: true, position: true });
  let open: OpenPoint | null = null;
  let inElevation = false;
  let seen = 0;
  let root = true;
  const refuse = (reason: string): never => {
    throw new Unreadable(`${reason} (line ${xml.line + 1})`);
  };
  xml.onerror = (error) => refuse(error.message.split('\n')[0] ?? 'broken XML');
  xml.ondoctype = () => refuse('a document type is not allowed');
  xml.onopentag = (tag) => {
    if (!('local' in tag)) return;
    if (root && (tag.local !== 'gpx' || !gpxNamespace.test(tag.uri)))
      refuse('the file does not begin as GPX');
    root = false;
    if (tag.local === 'trkseg' || tag.local === 'rte') segments.push([]);
    if (tag.local === 'trkpt' || tag.local === 'rtept') {
      seen += 1;
      if (seen > mostPoints) refuse(`more than ${mostPoints} points`);
      open = {
        latDeg: coordinate(tag.attributes.lat?.value, 90, 'latitude', refuse),
        lonDeg: coordinate(tag.attributes.lon?.value, 180, 'longitude', refuse),
        elevationM: null,
      };
    }
    inElevation = tag.local === 'ele';
  };
  xml.ontext = (content) => {
    if (open === null || !inElevation) return;
    const elevation = Number(content);
    if (Number.isFinite(elevation)) open.elevationM = elevation;
  };
  xml.onclosetag = (name) => {
    const local = name.slice(name.indexOf(':') + 1);
    if (local === 'ele') inElevation = false;
    if ((local === 'trkpt' || local === 'rtept') && open !== null) {
      segments.at(-1)?.push(open);
      open = null;
    }
  };
  xml.write(text).close();
}

function coordinate(
  text: string | undefined,
  limit: number,
  name: string,
  refuse: (reason: string) => never,
): number {
  const value = text === undefined || text.trim() === '' ? NaN : Number(text);
  return Math.abs(value) <= limit
    ? value
    : refuse(`a ${name} of ${text ?? 'nothing'}, allowed −${limit} to ${limit}`);
}
