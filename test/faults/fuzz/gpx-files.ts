import fc from 'fast-check';
import { at, cutShort, overwritten, share, spacedByNuls, twice } from './text-damage.ts';

/*
 * GPX files, from ridden tracks to such as were damaged on the way, and the ways to cut one into parts.
 */

const namespace = 'http://www.topografix.com/GPX/1/1';

interface Spot {
  readonly lat: number;
  readonly lon: number;
}

const step = fc.record({
  lat: fc.double({ min: -0.004, max: 0.004, noNaN: true }),
  lon: fc.double({ min: -0.004, max: 0.004, noNaN: true }),
});

const home = fc.oneof(
  fc.record({
    lat: fc.double({ min: -60, max: 60, noNaN: true }),
    lon: fc.double({ min: -179, max: 179, noNaN: true }),
  }),
  // Where degrees of longitude are short, or start anew.
  fc.constantFrom(
    { lat: 89.999, lon: 0 },
    { lat: -90, lon: 180 },
    { lat: 0, lon: 179.999 },
    { lat: 90, lon: -180 },
  ),
);

/** Spots one after another, some of them twice. */
const way: fc.Arbitrary<readonly Spot[]> = fc
  .tuple(
    home,
    fc.array(fc.oneof({ weight: 9, arbitrary: step }, fc.constant({ lat: 0, lon: 0 })), { maxLength: 60 }),
  )
  .map(([start, steps]) => {
    const spots: Spot[] = [];
    let { lat, lon } = start;
    for (const each of steps) {
      [lat, lon] = [lat + each.lat, lon + each.lon];
      spots.push({ lat, lon });
    }
    return spots;
  });

const oddTexts = [
  '',
  ' ',
  'NaN',
  '-0',
  '1e308',
  'Infinity',
  '١٢',
  '0x1F',
  '1,5',
  '&amp;',
  '&#0;',
  '&bomb;',
  '-90',
  '180',
  '180.00001',
];
const oddText = fc.oneof(fc.constantFrom(...oddTexts), fc.string());

const height = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: -400, max: 4000, noNaN: true }).map(String) },
  { weight: 1, arbitrary: oddText },
);

/** As a rule each a while after the one before; now and then back in time, far ahead, or no time. */
const time = (place: number): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 6, arbitrary: fc.constant(new Date(Date.UTC(2027, 4, 3, 8) + place * 30_000).toISOString()) },
    {
      weight: 1,
      arbitrary: fc.constantFrom('1900-01-01T00:00:00Z', '9999-12-31T23:59:59+14:00', '2027-02-30T00:00:00Z'),
    },
    { weight: 1, arbitrary: oddText },
  );

const clutter = fc.constantFrom(
  '',
  ...[
    '<!-- -- -->',
    '<![CDATA[<trkpt lat="1" lon="2">]]>',
    '<?target data?>',
    '<name>&lt;&#x1F6B2;&quot;</name>',
  ],
  ...[
    '<extensions><x:ele xmlns:x="u:x">9</x:ele></extensions>',
    '<wpt lat="1" lon="2"/>',
    '\ud83d',
    '\r\n\t',
  ],
);

interface PointText {
  readonly ele: string | null;
  readonly time: string | null;
  readonly clutter: string;
}

function pointText(tag: string, { lat, lon }: Spot, { ele, time: at, clutter: more }: PointText): string {
  const heightText = ele === null ? '' : `<ele>${ele}</ele>`;
  const timeText = at === null ? '' : `<time>${at}</time>`;
  return `<${tag} lat="${lat}" lon="${lon}">${heightText}${timeText}${more}</${tag}>`;
}

/** A segment, or a route where `tag` says so. */
const segment = fc
  .tuple(way, fc.boolean(), fc.boolean(), fc.constantFrom('trkpt', 'trkpt', 'trkpt', 'rtept'))
  .chain(([spots, hasHeights, hasTimes, tag]) =>
    fc.tuple(
      fc.constant(tag),
      ...spots.map((spot, place) =>
        fc
          .record<PointText>({
            ele: hasHeights ? fc.option(height, { freq: 12 }) : fc.constant(null),
            time: hasTimes ? fc.option(time(place), { freq: 12 }) : fc.constant(null),
            clutter: fc.oneof({ weight: 15, arbitrary: fc.constant('') }, clutter),
          })
          .map((text) => pointText(tag, spot, text)),
      ),
    ),
  )
  .map(([tag, ...points]) =>
    tag === 'rtept' ? `<rte>${points.join('')}</rte>` : `<trk><trkseg>${points.join('')}</trkseg></trk>`,
  );

/** XML by its own rules, and GPX nearly by the rules of that. */
const goodGpx: fc.Arbitrary<string> = fc
  .tuple(fc.array(segment, { maxLength: 4 }), clutter)
  .map(
    ([segments, more]) =>
      `<?xml version="1.0"?><gpx version="1.1" xmlns="${namespace}">${more}${segments.join('')}</gpx>`,
  );

/** Straight to the north, in two points or in many. */
const straightTrack = fc.constantFrom(2, 20_000).map((count) => {
  const points = Array.from({ length: count }, (_, place) => `<trkpt lat="${45 + place / 20_000}" lon="7"/>`);
  return `<gpx xmlns="${namespace}"><trk><trkseg>${points.join('')}</trkseg></trk></gpx>`;
});

const bombs = fc.constantFrom(
  '<!DOCTYPE gpx [<!ENTITY a "aaaaaaaa"><!ENTITY bomb "&a;&a;&a;&a;&a;&a;&a;&a;">]>',
  '<!DOCTYPE gpx SYSTEM "file:///etc/hostname">',
  `<!--${'-'.repeat(100_000)}`,
  `<${'a'.repeat(100_000)}>`,
  '<a>'.repeat(5000),
  `<gpx ${'a="" '.repeat(20_000)}>`,
);
const marks = fc.constantFrom('\ufeff', '\ufffe', '\ufffd\ufffd', '\0', ' ', '\u00ef\u00bb\u00bf');

const damaged: fc.Arbitrary<string> = fc.oneof(
  cutShort(goodGpx),
  overwritten(goodGpx, fc.string({ unit: 'binary', maxLength: 3 })),
  fc
    .tuple(goodGpx, share, share)
    .map(([text, one, other]) => text.slice(0, at(text, one)) + text.slice(at(text, other))),
  fc.tuple(goodGpx, bombs).map(([text, bomb]) => bomb + text),
  fc.tuple(goodGpx, bombs).map(([text, bomb]) => text.replace('?>', `?>${bomb}`)),
  fc.tuple(goodGpx, marks).map(([text, mark]) => mark + text),
  spacedByNuls(goodGpx),
  twice(goodGpx),
  goodGpx.map((text) => text.replace(namespace, 'u:other')),
);

export const anyGpx: fc.Arbitrary<string> = fc.oneof(
  { weight: 8, arbitrary: goodGpx },
  { weight: 6, arbitrary: damaged },
  { weight: 1, arbitrary: straightTrack },
  { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
);

/** The parts of a text cut anywhere, within tags and characters too. */
export function cutAt(text: string, places: readonly number[]): readonly string[] {
  const cuts = [0, ...places.map((place) => at(text, place)).sort((one, other) => one - other), text.length];
  return cuts.slice(1).map((end, index) => text.slice(cuts[index], end));
}

export const cutPlaces: fc.Arbitrary<readonly number[]> = fc.array(share, { maxLength: 6 });
