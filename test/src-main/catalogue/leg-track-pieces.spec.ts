import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../db/demo/demo.ts';
import { mostTrackPieces, type TrackPiece } from '../../../shared-types/track.ts';
import type { OpenedCatalogue } from '../../../src-main/catalogue/open.ts';
import { readPieces, writePieces } from '../../../src-main/catalogue/leg-track-pieces.ts';
import { writeTrack } from '../../../src-main/catalogue/leg-tracks.ts';
import { trackFixture } from '../../support/track-fixture.ts';
import { openedTrackless } from './temporary-catalogue.ts';

const tourId = demoTours[0]!.id;

/** Each piece another, so that one in the wrong place shows; some with times, some without, one with both. */
const pieces: readonly TrackPiece[] = [
  { distanceKm: 12.5, stretches: [{ gradePct: 4, speedKmh: 9.5, share: 1 }] },
  {
    distanceKm: 12.5,
    stretches: [
      { gradePct: -6, speedKmh: null, share: 1 / 3 },
      { gradePct: -6, speedKmh: 38, share: 2 / 3 },
    ],
  },
  { distanceKm: 11.25, stretches: [{ gradePct: 0, speedKmh: null, share: 1 }] },
];

/** The first leg of the demo with a track whose pieces are still to be written. */
function withoutPieces(): OpenedCatalogue {
  const catalogue = openedTrackless();
  writeTrack(catalogue.write, tourId, 0, {
    pace: 'computed',
    track: trackFixture({ pieces: [] }),
  });
  return catalogue;
}

function storedAs(stretches: string): OpenedCatalogue {
  const catalogue = withoutPieces();
  writePieces(catalogue.write, tourId, 0, pieces);
  catalogue.write.prepare('UPDATE leg_track_pieces SET stretches = ? WHERE position = 1').run(stretches);
  return catalogue;
}

describe('readPieces()', () => {
  it.each([
    ['a word for a grade', '[["steep",null,1]]', /0\.0: a number from −40 to 40\u202f%/],
    ['a grade no road has', '[[0,null,1],[41,null,1]]', /1\.0: a number from −40 to 40\u202f%/],
    ['a speed no rider has', '[[0,500,1]]', /0\.1: a number from 0\.5 to 120 km\/h/],
    ['a share above the whole', '[[0,null,1.5]]', /0\.2: a number from 0 to 1/],
    ['a figure left out', '[[0,null]]', /stretches of leg 0 of tour demo-tour/],
    ['a figure too many', '[[0,null,1,2]]', /stretches of leg 0 of tour demo-tour/],
    ['another shape of stretch', '[{"gradePct":0}]', /stretches of leg 0 of tour demo-tour/],
  ])('throws where the file holds %s', (_, stretches, message) => {
    const { read } = storedAs(stretches);
    expect(() => readPieces(read, tourId, 0)).toThrow(message);
  });

  it('throws when there are none', () => {
    expect(() => readPieces(withoutPieces().read, tourId, 0)).toThrow(/track without pieces for leg 0/);
  });
});

describe('writePieces()', () => {
  it('refuses the pieces of a leg without a track', () => {
    expect(() => writePieces(openedTrackless().write, tourId, 0, pieces)).toThrow(/FOREIGN KEY/);
  });

  it('refuses more pieces than a track has', () => {
    const many = new Array<TrackPiece>(mostTrackPieces + 1).fill(pieces[0]!);
    expect(() => writePieces(withoutPieces().write, tourId, 0, many)).toThrow(/position BETWEEN 0 AND 39/);
  });

  it('is read again in the order of the ride', () => {
    const { read, write } = withoutPieces();
    writePieces(write, tourId, 0, pieces);
    expect(readPieces(read, tourId, 0)).toEqual(pieces);
  });

  it('stores stretches without the names of their figures', () => {
    const { read, write } = withoutPieces();
    writePieces(write, tourId, 0, pieces);
    const sql = 'SELECT stretches FROM leg_track_pieces WHERE position = 0';
    expect(read.prepare(sql).pluck().get()).toBe('[[4,9.5,1]]');
  });
});
