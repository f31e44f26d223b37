import { describe, expect, it } from 'vitest';
import { nodeHeights, type TrackHeights } from '../../../../../src-main/model/ride/track/node-heights.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { northwards, storeOf, type TestPoint } from '../../../../support/track-points.ts';

const none = NaN;

/** Heights at the nodes, 20 m apart where the points are whole multiples of that apart. */
function heightsOf(...segments: readonly TestPoint[][]): TrackHeights | null {
  const points = storeOf(...segments);
  return nodeHeights(points, rideAlong(points));
}

function expectHeights(got: TrackHeights | null, expected: readonly number[]): void {
  expect(got?.riddenM).toHaveLength(expected.length);
  expected.forEach((heightM, node) =>
    expectNear(got!.riddenM[node]!, heightM, 1e-6, `height at node ${node}, m`),
  );
}

describe('nodeHeights()', () => {
  it('has no heights where no point has one', () => {
    expect(heightsOf(northwards(20, [none, none, none]))).toBeNull();
    expect(heightsOf()).toBeNull();
  });

  it('lies straight between the points that have a height', () => {
    expectHeights(heightsOf(northwards(20, [10, none, none, 40])), [10, 20, 30, 40]);
    expectHeights(heightsOf(northwards(60, [10, 40])), [10, 20, 30, 40]);
  });

  it('is level before the first and after the last height', () => {
    expectHeights(heightsOf(northwards(20, [none, none, 7, 9, none])), [7, 7, 7, 9, 9]);
  });

  it('takes the mean of heights read while standing', () => {
    const [start, middle, end] = northwards(20, [0, 0, 0]);
    const stood = [4, 8, 12].map((elevationM) => ({ ...middle!, elevationM }));
    expectHeights(heightsOf([start!, ...stood, end!]), [0, 8, 0]);
  });

  it('leaves out a leap from one segment to the next, and says where it was', () => {
    const got = heightsOf(northwards(20, [10, 12]), northwards(20, [500, 504]));
    expectHeights(got, [10, 12, 16]);
    expect(got!.leaps).toHaveLength(1);
    expectNear(got!.leaps[0]!.atKm, 0.02, 1e-9, 'place of the leap, km');
    expectNear(got!.leaps[0]!.riseM, 488, 1e-9, 'leap, m');
  });

  it('keeps heights that waver from one segment to the next, at their mean', () => {
    const got = heightsOf(northwards(20, [10, 12]), northwards(20, [8, 14]));
    expectHeights(got, [10, 10, 14]);
    expect(got!.leaps).toEqual([]);
  });

  it('takes no steep road within a segment for a leap', () => {
    const got = heightsOf(northwards(20, [0, 90]), northwards(20, [90, 0]));
    expectHeights(got, [0, 90, 0]);
    expect(got!.leaps).toEqual([]);
  });

  it('lays segments without heights between their neighbours', () => {
    const without = (): TestPoint[] => northwards(40, [none, none]);
    expectHeights(
      heightsOf(northwards(20, [0, 1]), without(), without(), northwards(20, [5, 6])),
      [0, 1, 2, 3, 4, 5, 6],
    );
  });

  it('holds segments without heights at either end level', () => {
    const without = (): TestPoint[] => northwards(20, [none, none]);
    expectHeights(heightsOf(without(), northwards(20, [3, 5]), without()), [3, 3, 5, 5]);
  });
});
