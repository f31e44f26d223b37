import { describe, expect, it } from 'vitest';
import { id } from '../../../../shared-types/field.ts';
import {
  createTrackDesk,
  longestWaitMs,
  mostOpenTracks,
  type TrackDesk,
} from '../../../../src-main/workbench/track-intake/track-desk.ts';
import { valleyRide } from '../../../support/gpx-text.ts';

/** A desk whose clock the test turns. */
function deskAt(): { desk: TrackDesk; wait: (ms: number) => void } {
  let nowMs = 5000;
  return { desk: createTrackDesk(() => nowMs), wait: (ms) => void (nowMs += ms) };
}

const gone = {
  ok: false,
  error: { code: 'not-found', message: 'That track is no longer being read: choose the file again.' },
};

describe('the desk of tracks', () => {
  it('knows nothing of an id it did not give', () => {
    const { desk } = deskAt();
    expect(desk.add('other', 'text')).toMatchObject(gone);
    expect(desk.finish('other')).toMatchObject(gone);
    expect(desk.drop('other')).toBe(false);
  });

  it('forgets a track that cannot be read', () => {
    const { desk } = deskAt();
    const trackId = desk.begin('page.gpx');
    expect(desk.add(trackId, '<html>')).toMatchObject({ ok: false, error: { code: 'unreadable' } });
    expect(desk.add(trackId, '</html>')).toMatchObject(gone);
  });

  it('forgets a track that ends before it is complete', () => {
    const { desk } = deskAt();
    const trackId = desk.begin('half.gpx');
    desk.add(trackId, valleyRide().slice(0, 5000));
    expect(desk.finish(trackId)).toMatchObject({ ok: false, error: { code: 'unreadable' } });
    expect(desk.finish(trackId)).toMatchObject(gone);
  });

  it('forgets a track once it is finished or dropped', () => {
    const { desk } = deskAt();
    const trackId = desk.begin('ride.gpx');
    desk.add(trackId, valleyRide());
    expect(desk.finish(trackId)).toMatchObject({ ok: true, value: { name: 'ride.gpx' } });
    expect(desk.finish(trackId)).toMatchObject(gone);
    const other = desk.begin('ride.gpx');
    expect(desk.drop(other)).toBe(true);
    expect(desk.drop(other)).toBe(false);
  });

  it('gives up a track that gets no part for ten minutes', () => {
    const { desk, wait } = deskAt();
    const trackId = desk.begin('ride.gpx');
    wait(longestWaitMs);
    expect(desk.add(trackId, valleyRide()).ok).toBe(true);
    wait(longestWaitMs + 1);
    expect(desk.finish(trackId)).toMatchObject(gone);
  });

  it('drops the one longest without a part for a fifth', () => {
    const { desk, wait } = deskAt();
    const ids = Array.from({ length: mostOpenTracks }, () => {
      wait(1000);
      return desk.begin('ride.gpx');
    });
    desk.add(ids[0]!, '<?xml version="1.0"?>');
    const fifth = desk.begin('ride.gpx');
    const open = [...ids, fifth].map((trackId) => desk.drop(trackId));
    expect(open).toEqual([true, false, true, true, true]);
  });

  it('takes in several tracks side by side', () => {
    const { desk } = deskAt();
    const text = valleyRide();
    const [first, second] = [desk.begin('first.gpx'), desk.begin('second.gpx')];
    desk.add(first, text.slice(0, 1000));
    desk.add(second, text.slice(0, 7000));
    desk.add(first, text.slice(1000));
    desk.add(second, text.slice(7000));
    const [one, two] = [desk.finish(first), desk.finish(second)];
    expect(one).toMatchObject({ ok: true, value: { name: 'first.gpx', heightShare: 1 } });
    expect(two).toMatchObject({ ok: true, value: { name: 'second.gpx', heightShare: 1 } });
  });

  it('counts the points as they come', () => {
    const { desk } = deskAt();
    const trackId = desk.begin('ride.gpx');
    const half = valleyRide().length / 2;
    const counts = [valleyRide().slice(0, half), valleyRide().slice(half)].map((part) => {
      const outcome = desk.add(trackId, part);
      return outcome.ok ? outcome.value.points : NaN;
    });
    expect(counts[0]).toBeGreaterThan(80);
    // 101 uphill, 12 standing, 25 downhill, 51 on the level.
    expect(counts[1]).toBe(189);
  });

  it('gives ids that the contract takes, never twice', () => {
    const { desk } = deskAt();
    const ids = Array.from({ length: 50 }, () => desk.begin('ride.gpx'));
    expect(ids.every((trackId) => id.safeParse(trackId).success)).toBe(true);
    expect(new Set(ids).size).toBe(50);
  });
});
