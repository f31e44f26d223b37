import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../db/demo/demo.ts';
import { mostTrackHeights } from '../../../shared-types/track.ts';
import { readTrack, writeTrack, type RiddenTrack } from '../../../src-main/catalogue/leg-tracks.ts';
import { trackFixture } from '../../support/track-fixture.ts';
import { openedTrackless } from './temporary-catalogue.ts';

const tourId = demoTours[0]!.id;

const ridden: RiddenTrack = { pace: 'computed', track: trackFixture() };

describe('readTrack()', () => {
  it('throws when heights break a rule of the contract', () => {
    const { read, write } = openedTrackless();
    writeTrack(write, tourId, 1, ridden);
    write.exec("UPDATE leg_tracks SET heights = '[420, 99999]'");
    expect(() => readTrack(read, tourId, 1)).toThrow(
      /heights of leg 1 of tour demo-tour .* from −500 to 9,000 m/,
    );
  });

  it('throws when a track has lost its pieces', () => {
    const { read, write } = openedTrackless();
    writeTrack(write, tourId, 1, ridden);
    write.exec('DELETE FROM leg_track_pieces');
    expect(() => readTrack(read, tourId, 1)).toThrow(/track without pieces for leg 1/);
  });

  it('is null for a leg that has a terrain class only', () => {
    const { read, write } = openedTrackless();
    writeTrack(write, tourId, 1, ridden);
    expect([readTrack(read, tourId, 0), readTrack(read, tourId, 2)]).toEqual([null, null]);
  });
});

describe('writeTrack()', () => {
  it('refuses the track of a leg that is missing', () => {
    expect(() => writeTrack(openedTrackless().write, tourId, 7, ridden)).toThrow(/FOREIGN KEY/);
  });

  it('refuses more heights than a profile has', () => {
    const heightsM = new Array<number>(mostTrackHeights + 1).fill(420);
    const track = trackFixture({ heightsM });
    expect(() => writeTrack(openedTrackless().write, tourId, 0, { ...ridden, track })).toThrow(/heights/);
  });

  it('is read again with every figure it had', () => {
    const { read, write } = openedTrackless();
    writeTrack(write, tourId, 1, ridden);
    expect(readTrack(read, tourId, 1)).toEqual(ridden);
  });

  it('keeps a track without heights apart from one at sea', () => {
    const { read, write } = openedTrackless();
    const flat = trackFixture({ meanElevationM: 0, heightsM: [0, 0] });
    const unknown = trackFixture({ meanElevationM: null, heightShare: 0, heightsM: [] });
    writeTrack(write, tourId, 0, { ...ridden, track: flat });
    writeTrack(write, tourId, 1, { ...ridden, track: unknown });
    expect(readTrack(read, tourId, 0)?.track).toEqual(flat);
    expect(readTrack(read, tourId, 1)?.track).toEqual(unknown);
  });

  it('keeps the pace that the rider chose', () => {
    const { read, write } = openedTrackless();
    writeTrack(write, tourId, 1, { ...ridden, pace: 'recorded' });
    expect(readTrack(read, tourId, 1)?.pace).toBe('recorded');
  });
});
