import { describe, expect, it } from 'vitest';
import type { Leg, TrackPace } from '../../../../shared-types/tour.ts';
import { hoursNotes, rideNotes } from '../../../../src-main/workbench/assemble/ride-notes.ts';
import { settlePlace } from '../../../../src-main/workbench/assemble/place.ts';
import { coordinates, legFixture, stationFixture } from '../../../support/station-fixture.ts';
import { trackOf } from '../../../support/track-fixture.ts';

const level = [{ gradePct: 0, speedKmh: null, share: 1 }];
const onTrack = (changes: Partial<Leg> = {}, track = trackOf([level]), pace: TrackPace = 'computed'): Leg =>
  legFixture({ terrain: { as: 'track', terrainClass: 'rolling', pace, track }, ...changes });

const notesOf = (leg: Leg): readonly string[] =>
  rideNotes(leg, settlePlace(leg.place, leg.radiation, [stationFixture('Plain')])!);

describe('rideNotes()', () => {
  it('has nothing to say of a terrain class', () => expect(notesOf(legFixture())).toEqual([]));

  it('says how far the track lies from the place of the leg', () => {
    const [far] = notesOf(onTrack({ place: coordinates(47, 10) })).slice(-1);
    expect(far?.replaceAll('\u00a0', ' ')).toMatch(/^The middle of the track lies 222 km from the place/);
    expect(notesOf(onTrack()).join(' ')).not.toMatch(/The middle of the track/);
  });

  it('passes on what the track itself leaves open', () => {
    expect(notesOf(onTrack({}, { ...trackOf([level]), heightShare: 0 })).join(' ')).toMatch(/no heights/);
    expect(notesOf(onTrack()).join(' ')).not.toMatch(/speeds/);
    expect(notesOf(onTrack({}, trackOf([level]), 'recorded')).join(' ')).toMatch(/no recorded speeds/);
  });
});

describe('hoursNotes()', () => {
  it('has nothing to say of a class, or of a leg without riding', () => {
    expect(hoursNotes(legFixture(), 10)).toEqual([]);
    expect(hoursNotes(onTrack({ ridingHours: 0 }), 10)).toEqual([]);
  });

  it('is silent within a tenth of the hours planned', () => {
    expect(hoursNotes(onTrack({ days: 1, ridingHours: 5 }), 10)).toEqual([]);
    expect(hoursNotes(onTrack({ days: 1, ridingHours: 4.6 }), 10)).toEqual([]);
  });

  it('names the hours the track takes and those of the leg', () => {
    const [note] = hoursNotes(onTrack({ days: 2, ridingHours: 2 }), 10);
    expect(note).toMatch(/^The track takes 5 h of riding, 2.5 h a day; the leg has 4 h \(\+25\s%\)/u);
  });
});
