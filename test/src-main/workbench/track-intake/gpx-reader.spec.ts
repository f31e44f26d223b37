import { describe, expect, it } from 'vitest';
import { createPointStore, type PointStore } from '../../../../src-main/model/ride/track/point-store.ts';
import { createGpxReader } from '../../../../src-main/workbench/track-intake/gpx-reader.ts';
import { Unreadable } from '../../../../src-main/workbench/track-intake/unreadable.ts';
import { gpx, segmentsGpx, trackPoint } from '../../../support/gpx-text.ts';

function readInParts(...parts: readonly string[]): PointStore {
  const points = createPointStore();
  const reader = createGpxReader(points);
  for (const part of parts) reader.add(part);
  reader.end();
  return points;
}

/** One row a point: latitude, longitude, height and time, null where there is none. */
const rows = (points: PointStore): (number | null)[][] =>
  Array.from({ length: points.count }, (_, index) =>
    [points.latDeg, points.lonDeg, points.elevationM, points.timeS].map((column) =>
      Number.isNaN(column[index]) ? null : column[index]!,
    ),
  );

const heightsIn = (...inner: readonly string[]): (number | null)[] =>
  rows(readInParts(segmentsGpx(inner.map((each) => trackPoint('45', '7', each))))).map((row) => row[2]!);

describe('a file that is no GPX track', () => {
  const two = [trackPoint('45', '7'), trackPoint('45.1', '7')];
  it.each([
    { what: 'an empty file', text: '', reason: /^the file is empty$/ },
    {
      what: 'plain words',
      text: 'not a track at all',
      reason: /^the file does not begin as GPX \(line 1\)$/,
    },
    { what: 'a page of another kind', text: '<html></html>', reason: /does not begin as GPX \(line 1\)/ },
    {
      what: 'another namespace',
      text: gpx('<trk/>', 'http://example.org/other'),
      reason: /namespace is http:\/\/example\.org\/other, not that of GPX/,
    },
    { what: 'no namespace', text: '<gpx/>', reason: /namespace is nothing/ },
    {
      what: 'a file cut off in a tag',
      text: segmentsGpx(two).slice(0, 150),
      reason: /as if cut off \(line 1\)/,
    },
    {
      what: 'a file cut off between tags',
      text: segmentsGpx(two).split('</trkseg>')[0]!,
      reason: /as if cut off/,
    },
    {
      what: 'tags that do not match',
      text: gpx('<trk></rte>'),
      reason: /^it is damaged and stops making sense \(line 1\)$/,
    },
    { what: 'a second document', text: gpx('') + '<gpx/>', reason: /a second document/ },
    {
      what: 'latitude 200',
      text: segmentsGpx([trackPoint('200', '7')]),
      reason: /latitude of 200, allowed −90 to 90/,
    },
    { what: 'longitude 181', text: segmentsGpx([trackPoint('45', '181')]), reason: /longitude of 181/ },
    {
      what: 'a longitude in words',
      text: segmentsGpx([trackPoint('45', 'east')]),
      reason: /longitude of east/,
    },
    {
      what: 'a point without longitude',
      text: segmentsGpx(['<trkpt lat="45"/>']),
      reason: /longitude of nothing/,
    },
    {
      what: 'a point inside a point',
      text: segmentsGpx([trackPoint('45', '7', trackPoint('45', '7'))]),
      reason: /a point inside a point/,
    },
    { what: 'endless nesting', text: gpx('<a>'.repeat(100)), reason: /more than 64 deep/ },
    {
      what: 'an entity it does not know',
      text: gpx('<name>&leak;</name>'),
      reason: /^it is damaged and stops making sense/,
    },
    { what: 'a tag without end', text: `<gpx ${'a'.repeat(200_000)}`, reason: /longer than/ },
    {
      what: 'a tag of too many attributes',
      text: `<gpx ${Array.from({ length: 20_000 }, (_, index) => `a${index}=""`).join(' ')}>`,
      reason: /a tag longer than 65,536 characters/,
    },
  ])('refuses $what', ({ text, reason }) => {
    expect(() => readInParts(text)).toThrow(Unreadable);
    expect(() => readInParts(text)).toThrow(reason);
  });

  it.each([
    '<!DOCTYPE gpx>',
    '<!DOCTYPE gpx [<!ENTITY x "y">]>',
    '<!DOCTYPE gpx [<!ENTITY x SYSTEM "file:///etc/hostname">]>',
  ])('refuses the document type %s', (doctype) => {
    const text = doctype + gpx('<trk><name>&x;</name></trk>');
    expect(() => readInParts(text)).toThrow(/a document type is not allowed/);
  });

  it('names the line, counted over the parts', () => {
    const text = segmentsGpx([trackPoint('45', '7'), `\n\n${trackPoint('95', '7')}`]);
    expect(() => readInParts(text.slice(0, 180), text.slice(180))).toThrow(/95.*\(line 3\)$/);
  });

  it('says little of a value that goes on and on', () => {
    expect(() => readInParts(segmentsGpx([trackPoint('9'.repeat(5000), '7')]))).toThrow(
      /latitude of 9{40}…,/,
    );
  });

  it('refuses more than 500,000 points', () => {
    const row = trackPoint('1', '2').repeat(1000);
    const parts = [
      '<gpx xmlns="http://www.topografix.com/GPX/1/1"><trk><trkseg>',
      ...new Array<string>(501).fill(row),
    ];
    expect(() => readInParts(...parts)).toThrow(/more than 500,000 points/);
  });
});

describe('the points of a GPX file', () => {
  it('come with height and time, or without', () => {
    const points = readInParts(
      segmentsGpx([
        trackPoint('45', '7', '<ele>120.5</ele><time>2027-05-03T08:00:00Z</time>'),
        trackPoint('45.1', '-7.5'),
        trackPoint('46', '8', '<time>yesterday</time><ele>?</ele>'),
      ]),
    );
    expect(rows(points)).toEqual([
      [45, 7, 120.5, Date.UTC(2027, 4, 3, 8) / 1000],
      [45.1, -7.5, null, null],
      [46, 8, null, null],
    ]);
  });

  const route = '<rte><rtept lat="1" lon="2"/><rtept lat="1" lon="3"/></rte>';
  const segment = `<trkseg>${trackPoint('1', '4')}</trkseg>`;

  it('form a segment for each trkseg of each track', () => {
    const points = readInParts(gpx(`<trk>${segment}<trkseg/>${segment}</trk><trk>${segment}</trk>`));
    expect(points.segmentStarts).toEqual([0, 1, 2]);
    expect(points.count).toBe(3);
  });

  it('form a segment for each route where there is no track', () => {
    expect(readInParts(gpx(`${route}${route}<trk><trkseg/></trk>`)).segmentStarts).toEqual([0, 2, 4]);
  });

  it.each([
    { where: 'before', text: gpx(`${route}<trk>${segment}${segment}</trk>`) },
    { where: 'after', text: gpx(`<trk>${segment}${segment}</trk>${route}`) },
  ])('are those of the track alone with the same way as a route $where it', ({ text }) => {
    const points = readInParts(text);
    expect(rows(points).map(([, lon]) => lon)).toEqual([4, 4]);
    expect(points.segmentStarts.slice(0, 2)).toEqual([0, 1]);
  });

  it('are read from the predecessor of GPX 1.1 too', () => {
    expect(
      readInParts(
        gpx(`<trk><trkseg>${trackPoint('1', '2')}</trkseg></trk>`, 'http://www.topografix.com/GPX/1/0'),
      ).count,
    ).toBe(1);
  });

  it('are read whatever prefix the namespace has', () => {
    const text =
      '<g:gpx xmlns:g="http://www.topografix.com/GPX/1/1"><g:trk><g:trkseg><g:trkpt lat="1" lon="2"><g:ele>3</g:ele></g:trkpt></g:trkseg></g:trk></g:gpx>';
    expect(rows(readInParts(text))).toEqual([[1, 2, 3, null]]);
  });

  it('do not include waypoints or points of another namespace', () => {
    const other = '<extensions xmlns="http://example.org/other"><trkpt lat="9" lon="9"/></extensions>';
    expect(readInParts(gpx(`<wpt lat="45" lon="7"/>${other}`)).count).toBe(0);
  });

  it('take no height from deeper inside or from another namespace', () => {
    expect(
      heightsIn(
        '<ele>5</ele><extensions><ele>9</ele></extensions>',
        '<ele>5</ele><x:ele xmlns:x="http://example.org/other">9</x:ele>',
        '<ele>5<ele>9</ele></ele>',
      ),
    ).toEqual([5, 5, null]);
  });

  it('take text in CDATA, entities and between comments as text', () => {
    expect(
      heightsIn(
        '<ele><![CDATA[42]]></ele>',
        '<ele>1<![CDATA[2]]>3</ele>',
        '<ele>&#52;4</ele>',
        '<ele>4<!-- -->5</ele>',
      ),
    ).toEqual([42, 123, 44, 45]);
  });

  it('count a height of endless digits as missing', () => {
    expect(heightsIn(`<ele>${'1'.repeat(300_000)}</ele>`, '<ele>7</ele>')).toEqual([null, 7]);
  });

  it('are the same wherever a part ends', () => {
    const text = segmentsGpx([
      trackPoint('45.125', '7', '<name>\u{1F6B2} &amp; <![CDATA[<x>]]></name><ele>120.5</ele>'),
      trackPoint('45.25', '7', '<!-- - --><ele><![CDATA[121]]></ele>'),
    ]);
    const whole = rows(readInParts(text));
    expect(whole).toHaveLength(2);
    // Every place: within tags, numbers, entities, comments, CDATA and the surrogate pair of the bicycle.
    for (let cut = 1; cut < text.length; cut += 1)
      expect(rows(readInParts(text.slice(0, cut), text.slice(cut)))).toEqual(whole);
    expect(rows(readInParts(...text.split('')))).toEqual(whole);
  });
});
