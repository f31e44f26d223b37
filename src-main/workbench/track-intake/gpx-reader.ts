import sax, { type QualifiedAttribute, type QualifiedTag, type SAXParser } from 'sax';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import { latDeg, lonDeg } from '../../../shared-types/spot.ts';
import {
  addPoint,
  beginSegment,
  clearPoints,
  mostTrackPoints,
  type PointStore,
} from '../../model/ride/track/point-store.ts';
import { longestValueText, readCoordinate, readElevationM, readTimeS } from './gpx-values.ts';
import { Unreadable } from './unreadable.ts';

/** Namespaces of GPX 1.1 and its predecessor. */
const gpxNamespace = /^http:\/\/www\.topografix\.com\/GPX\/1\/[01]$/;
/** A GPX point lies five levels deep, its extensions a few more. */
const deepest = 64;
/** Text goes to the parser in slices of this length, so that what it holds back is looked at in between. */
const sliceLength = 65_536;
const longestTag = 65_536;
const latLimitDeg = latDeg.maxValue!;
const lonLimitDeg = lonDeg.maxValue!;
const echoLength = 40;

const segmentNames: ReadonlySet<string> = new Set(['trk', 'trkseg', 'rte']);
const pointNames: ReadonlySet<string> = new Set(['trkpt', 'rtept']);
const valueNames: ReadonlySet<string> = new Set(['ele', 'time']);

/** Reads a file handed over in parts of text, cut anywhere. */
export interface GpxReader {
  /** Throws `Unreadable` where the file stops making sense. */
  add(text: string): void;
  end(): void;
}

/** Where the reader is inside the file. */
interface Reading {
  readonly xml: SAXParser;
  readonly points: PointStore;
  depth: number;
  /** The namespace of the root; empty before it. */
  uri: string;
  /** Where an unfinished tag began to list its attributes; null outside of one. */
  tagFrom: number | null;
  /** A point of a track was met: what routes say of the same way is left out. */
  inTracks: boolean;
  /** Depth of the open point, 0 outside of one. */
  pointDepth: number;
  latDeg: number;
  lonDeg: number;
  elevationM: number;
  timeS: number;
  /** The value of a point that is open, and its text so far. */
  value: string | null;
  text: string;
}

/**
 * Reads the points of GPX tracks into `points`, a segment for each `trkseg`; in a file without tracks those of its routes, a
 * segment for each `rte`, for a planner writes the way it planned and the way it found into one file. Strict XML, no document
 * type and so no entities but those of XML itself. Holds one tag or text at a time, however long the file is.
 */
export function createGpxReader(points: PointStore): GpxReader {
  const xml = sax.parser(true, { xmlns: true, position: true });
  const reading: Reading = {
    xml,
    points,
    depth: 0,
    uri: '',
    tagFrom: null,
    inTracks: false,
    pointDepth: 0,
    latDeg: NaN,
    lonDeg: NaN,
    elevationM: NaN,
    timeS: NaN,
    value: null,
    text: '',
  };
  xml.onerror = (fault) => refuse(reading, xmlFault(fault, reading.uri !== ''));
  xml.ondoctype = () => refuse(reading, 'a document type is not allowed');
  xml.onopentagstart = () => void (reading.tagFrom = xml.position);
  xml.onopentag = (tag) => openTag(reading, tag as QualifiedTag);
  xml.ontext = (text) => addText(reading, text);
  xml.oncdata = (text) => addText(reading, text);
  xml.onclosetag = () => closeTag(reading);
  return { add: (text) => readPart(reading, text), end: () => endFile(reading) };
}

function readPart(reading: Reading, text: string): void {
  for (let from = 0; from < text.length; from += sliceLength) {
    reading.xml.write(text.slice(from, from + sliceLength));
    if (reading.tagFrom !== null && reading.xml.position - reading.tagFrom > longestTag)
      refuse(reading, `a tag longer than ${countText(longestTag)} characters`);
  }
}

function endFile(reading: Reading): void {
  reading.xml.onerror = () => refuse(reading, 'it ends before it is complete, as if cut off');
  reading.xml.close();
  if (reading.uri === '') throw new Unreadable('the file is empty');
}

function refuse({ xml }: Reading, reason: string): never {
  throw new Unreadable(`${reason} (line ${xml.line + 1})`);
}

function countText(count: number): string {
  return formatNumber(count, { locale: wordsLocale });
}

/** What the parser stumbles over, in words that help whoever has the file: it has come apart, or was never GPX. */
function xmlFault({ message }: Error, begun: boolean): string {
  if (message.startsWith(overlong)) return 'a name, value or comment longer than any in GPX';
  return begun ? 'it is damaged and stops making sense' : notGpx;
}

/** How the parser begins to say that a text is too long for it. */
const overlong = 'Max buffer length';
const notGpx = 'the file does not begin as GPX';

function openTag(reading: Reading, tag: QualifiedTag): void {
  reading.tagFrom = null;
  reading.depth += 1;
  if (reading.depth > deepest) refuse(reading, `tags more than ${deepest} deep`);
  if (reading.depth === 1) openRoot(reading, tag);
  reading.value = null;
  if (tag.uri !== reading.uri) return;
  if (segmentNames.has(tag.local)) beginSegment(reading.points);
  else if (pointNames.has(tag.local)) openPoint(reading, tag);
  else if (valueNames.has(tag.local) && reading.depth === reading.pointDepth + 1) {
    reading.value = tag.local;
    reading.text = '';
  }
}

function openRoot(reading: Reading, tag: QualifiedTag): void {
  if (reading.uri !== '') refuse(reading, 'a second document after the end of the first');
  if (tag.local !== 'gpx') refuse(reading, notGpx);
  if (!gpxNamespace.test(tag.uri))
    refuse(reading, `its namespace is ${echo(tag.uri)}, not that of GPX 1.1 or 1.0`);
  reading.uri = tag.uri;
}

function openPoint(reading: Reading, tag: QualifiedTag): void {
  if (reading.pointDepth > 0) refuse(reading, 'a point inside a point');
  if (tag.local === 'rtept' && reading.inTracks) return;
  if (tag.local === 'trkpt' && !reading.inTracks) {
    clearPoints(reading.points);
    reading.inTracks = true;
  }
  if (reading.points.count === mostTrackPoints)
    refuse(reading, `more than ${countText(mostTrackPoints)} points`);
  reading.pointDepth = reading.depth;
  reading.latDeg = coordinate(reading, tag.attributes['lat'], latLimitDeg, 'latitude');
  reading.lonDeg = coordinate(reading, tag.attributes['lon'], lonLimitDeg, 'longitude');
  reading.elevationM = NaN;
  reading.timeS = NaN;
}

function coordinate(
  reading: Reading,
  attribute: QualifiedAttribute | undefined,
  limitDeg: number,
  name: string,
): number {
  const text = attribute?.value ?? '';
  return (
    readCoordinate(text, limitDeg) ??
    refuse(reading, `a ${name} of ${echo(text)}, allowed −${limitDeg} to ${limitDeg}`)
  );
}

function echo(text: string): string {
  if (text.trim() === '') return 'nothing';
  return text.length > echoLength ? `${text.slice(0, echoLength)}…` : text;
}

/** A text may come in several pieces; one too long for any value is not kept. */
function addText(reading: Reading, text: string): void {
  if (reading.value === null) return;
  if (reading.text.length + text.length > longestValueText) reading.value = null;
  else reading.text += text;
}

function closeTag(reading: Reading): void {
  if (reading.value === 'ele') reading.elevationM = readElevationM(reading.text);
  if (reading.value === 'time') reading.timeS = readTimeS(reading.text);
  reading.value = null;
  if (reading.depth === reading.pointDepth) {
    addPoint(reading.points, reading.latDeg, reading.lonDeg, reading.elevationM, reading.timeS);
    reading.pointDepth = 0;
  }
  reading.depth -= 1;
}
