import { describe, expect, it } from 'vitest';
import { mostTrackPieces } from '../../../../../shared-types/track.ts';
import { cutPieces, pieceCount } from '../../../../../src-main/model/ride/track/cut-pieces.ts';
import { movingSpeeds } from '../../../../../src-main/model/ride/track/moving-speeds.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { stretchesOf, type StretchCells } from '../../../../../src-main/model/ride/track/stretch-cells.ts';
import { expectNear } from '../../../../support/near.ts';
import { northwards, storeOf, timedNorthwards, type TestPoint } from '../../../../support/track-points.ts';

/** Pieces of segments, with these heights at nodes 20 m apart. */
function cutAt(heightsM: readonly number[], ...segments: readonly TestPoint[][]): StretchCells {
  const points = storeOf(...segments);
  const track = rideAlong(points);
  return cutPieces(track, Float64Array.from(heightsM), movingSpeeds(points, track));
}

describe('pieceCount()', () => {
  it('never makes a piece shorter than 10 km, nor too many', () => {
    expect([0.1, 9, 19.9, 20, 399, 400, 40_000].map(pieceCount)).toEqual([
      1,
      1,
      1,
      2,
      39,
      40,
      mostTrackPieces,
    ]);
  });
});

describe('cutPieces()', () => {
  it('counts everything as level without heights', () => {
    const points = storeOf(northwards(100, [NaN, NaN, NaN]));
    const track = rideAlong(points);
    const cells = cutPieces(track, null, movingSpeeds(points, track));
    expect(stretchesOf(cells, 0).stretches).toEqual([{ gradePct: 0, speedKmh: null, share: 1 }]);
  });

  it('gives each step the grade between its nodes', () => {
    // 20 m each at +5 %, 0 and -10 %.
    const heightsM = [0, 1, 1, -1];
    const { stretches } = stretchesOf(cutAt(heightsM, northwards(20, heightsM)), 0);
    expect(stretches.map(({ gradePct, share }) => [gradePct, share])).toEqual([
      [-10, 0.3333333],
      [0, 0.3333333],
      [5, 0.3333333],
    ]);
  });

  it('parts a track at equal distances, within a step too', () => {
    // 25 km make two pieces; the border at 12.5 km lies half way along a step.
    const heightsM = Array.from({ length: 1251 }, (_, node) => Math.max(0, node - 625) / 5);
    const cells = cutAt(heightsM, northwards(20, heightsM));
    const [first, second] = [stretchesOf(cells, 0), stretchesOf(cells, 1)];
    expectNear(first.distanceKm, 12.5, 1e-6, 'first piece, km');
    expectNear(second.distanceKm, 12.5, 1e-6, 'second piece, km');
    expect(first.stretches.map(({ gradePct }) => gradePct)).toEqual([0]);
    expect(second.stretches.map(({ gradePct }) => gradePct)).toEqual([1]);
  });

  it('lets a piece run over several segments', () => {
    const half = northwards(20, new Array<number>(251).fill(5));
    const cells = cutAt(new Array<number>(1001).fill(5), half, half, half, half);
    expectNear(stretchesOf(cells, 0).distanceKm, 10, 1e-6, 'first piece, km');
    expectNear(stretchesOf(cells, 1).distanceKm, 10, 1e-6, 'second piece, km');
  });

  it('gives distance the speed of the points it lies between', () => {
    // Points 50 m apart do not fall on steps of 20 m: 18 km/h for 100 m, then 9 km/h for 100 m.
    const points = storeOf(timedNorthwards(50, [0, 10, 20, 40, 60]));
    const track = rideAlong(points);
    const cells = cutPieces(track, null, movingSpeeds(points, track));
    expect(stretchesOf(cells, 0).stretches).toEqual([
      { gradePct: 0, speedKmh: 9, share: 0.5 },
      { gradePct: 0, speedKmh: 18, share: 0.5 },
    ]);
  });
});
