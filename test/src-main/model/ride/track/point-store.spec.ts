import { describe, expect, it } from 'vitest';
import {
  addPoint,
  beginSegment,
  createPointStore,
} from '../../../../../src-main/model/ride/track/point-store.ts';

describe('the store of points', () => {
  it('leaves no trace of a segment without points', () => {
    const store = createPointStore();
    beginSegment(store);
    beginSegment(store);
    addPoint(store, 45, 7, NaN, NaN);
    beginSegment(store);
    beginSegment(store);
    addPoint(store, 46, 7, NaN, NaN);
    expect(store.segmentStarts).toEqual([0, 1]);
  });

  it('begins a segment by itself for a first point', () => {
    const store = createPointStore();
    addPoint(store, 45, 7, NaN, NaN);
    expect(store.segmentStarts).toEqual([0]);
  });

  it('keeps every point while it grows', () => {
    const store = createPointStore();
    const points = 5000;
    for (let index = 0; index < points; index += 1)
      addPoint(store, index / 100, -index / 100, index, index * 2);
    expect(store.count).toBe(points);
    for (const index of [0, 1023, 1024, 2047, 2048, points - 1]) {
      expect([store.latDeg[index], store.lonDeg[index], store.elevationM[index], store.timeS[index]]).toEqual(
        [index / 100, -index / 100, index, index * 2],
      );
    }
  });
});
