import { describe, expect, it } from 'vitest';
import { nodeHeights } from '../../../../../src-main/model/ride/track/node-heights.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { northwards, storeOf, type TestPoint } from '../../../../support/track-points.ts';

const none = NaN;

/** Heights at the nodes, 20 m apart where the points are whole multiples of that apart. */
function heightsOf(...segments: readonly TestPoint[][]): number[] | null {
  const points = storeOf(...segments);
  const heightsM = nodeHeights(points, rideAlong(points));
  return heightsM === null ? null : [...heightsM];
}

function expectHeights(got: number[] | null, expected: readonly number[]): void {
  expect(got).toHaveLength(expected.length);
  expected.forEach((heightM, node) => expectNear(got![node]!, heightM, 1e-6, `height at node ${node}, m`));
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

  it('keeps the step in height between two segments', () => {
    const high = northwards(20, [500, 510]);
    expectHeights(heightsOf(northwards(20, [10, 20]), high), [10, 20, 500, 510]);
  });

  it('lays segments without heights between their neighbours', () => {
    const without = (): TestPoint[] => northwards(40, [none, none]);
    expectHeights(
      heightsOf(northwards(20, [0, 10]), without(), without(), northwards(20, [50, 60])),
      [0, 10, 10, 20, 30, 30, 40, 50, 50, 60],
    );
  });

  it('holds segments without heights at either end level', () => {
    const without = (): TestPoint[] => northwards(20, [none, none]);
    expectHeights(heightsOf(without(), northwards(20, [3, 5]), without()), [3, 3, 3, 5, 5, 5]);
  });
});
