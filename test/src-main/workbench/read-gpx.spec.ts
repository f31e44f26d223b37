import { describe, expect, it } from 'vitest';
import { readGpx } from '../../../src-main/workbench/read-gpx.ts';

const gpx = (body: string, uri = 'http://www.topografix.com/GPX/1/1'): string =>
  `<?xml version="1.0"?><gpx version="1.1" creator="test" xmlns="${uri}">${body}</gpx>`;
const point = (lat: string, lon: string, inner = ''): string =>
  `<trkpt lat="${lat}" lon="${lon}">${inner}</trkpt>`;
const track = (...points: string[]): string => gpx(`<trk><trkseg>${points.join('')}</trkseg></trk>`);

describe('readGpx()', () => {
  it.each([
    { what: 'an empty file', text: '' },
    { what: 'plain words', text: 'not a track at all' },
    { what: 'a page of another kind', text: '<html><body>hello</body></html>' },
    { what: 'another namespace', text: gpx('<trk/>', 'http://example.org/other') },
    { what: 'a truncated file', text: track(point('45', '7'), point('45.1', '7')).slice(0, 160) },
    { what: 'a document type', text: '<!DOCTYPE gpx [<!ENTITY x "y">]>' + gpx('') },
    { what: 'latitude 200', text: track(point('200', '7'), point('45', '7')) },
    { what: 'a longitude that is a word', text: track(point('45', 'east'), point('45', '7')) },
    { what: 'a point without latitude', text: track('<trkpt lon="7"/>', point('45', '7')) },
    { what: 'a single point', text: track(point('45', '7')) },
    { what: 'waypoints only', text: gpx('<wpt lat="45" lon="7"/><wpt lat="46" lon="7"/>') },
  ])('refuses $what as unreadable', ({ text }) => {
    const outcome = readGpx(text);
    expect(outcome).toMatchObject({ ok: false, error: { code: 'unreadable' } });
  });

  it('names line, value and range of a bad coordinate', () => {
    const outcome = readGpx(track(point('45', '7'), `\n\n${point('95', '7')}`));
    expect(outcome.ok ? '' : outcome.error.message).toMatch(/latitude of 95.*−90 to 90.*line 3/);
  });

  it('reads segments, elevations and a missing elevation', () => {
    const body = `<trk><trkseg>${point('45', '7', '<ele>120.5</ele>')}${point('45.1', '7')}</trkseg>
      <trkseg>${point('46', '8', '<ele>3</ele><time>2027-05-03T08:00:00Z</time>')}</trkseg></trk>`;
    expect(readGpx(gpx(body))).toEqual({
      ok: true,
      value: [
        [
          { latDeg: 45, lonDeg: 7, elevationM: 120.5 },
          { latDeg: 45.1, lonDeg: 7, elevationM: null },
        ],
        [{ latDeg: 46, lonDeg: 8, elevationM: 3 }],
      ],
    });
  });

  it('reads a route as well as a track', () => {
    const outcome = readGpx(gpx('<rte><rtept lat="45" lon="7"/><rtept lat="45.2" lon="7"/></rte>'));
    expect(outcome.ok && outcome.value[0]).toHaveLength(2);
  });

  it('reads no entity from outside', () => {
    const text = gpx('<trk><name>&leak;</name></trk>');
    expect(readGpx(text)).toMatchObject({ ok: false, error: { code: 'unreadable' } });
  });
});
