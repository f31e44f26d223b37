import { describe, expect, it } from 'vitest';
import type { Leg, TrackPace } from '../../../../shared-types/tour.ts';
import { riddenNotes, rideNotes } from '../../../../src-main/workbench/assemble/ride-notes.ts';
import type { RiddenCourse } from '../../../../src-main/model/ride/ride-course.ts';
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

describe('riddenNotes()', () => {
  /** A leg ridden at one speed, with one power at the pedals. */
  const notesAt = (leg: Leg, speedKmh: number, takenW = 100): string =>
    riddenNotes(leg, { riderW: 100 }, {
      loaded: { speedKmh, laterShare: 0 },
      on: null,
      power: { riderW: takenW },
    } as RiddenCourse)
      .join(' ')
      .replaceAll(/[\u00a0\u202f]/gu, ' ');

  it('has nothing to say of a class, or of a leg without riding', () => {
    expect(notesAt(legFixture(), 10)).toBe('');
    expect(notesAt(onTrack({ ridingHours: 0 }), 10)).toBe('');
  });

  it('is silent within a tenth of the hours planned', () => {
    expect(notesAt(onTrack({ days: 1, ridingHours: 5 }), 10)).toBe('');
    expect(notesAt(onTrack({ days: 1, ridingHours: 4.6 }), 10)).toBe('');
  });

  it('names the hours the track takes and those of the leg', () => {
    expect(notesAt(onTrack({ days: 2, ridingHours: 2 }), 10)).toMatch(
      /^The track takes 5 h of riding, 25 % more than the 4 h of the leg\. Its days/,
    );
    expect(notesAt(onTrack({ days: 5, ridingHours: 8 }), 100)).toMatch(
      /^The track takes 30 min of riding, 99 % less than the 40 h of the leg/,
    );
  });

  const timed = trackOf([[{ gradePct: 0, speedKmh: 15, share: 1 }]]);
  const recorded = (changes: Partial<Leg> = {}): Leg =>
    onTrack({ days: 1, ridingHours: 3.3, ...changes }, timed, 'recorded');

  it('doubts recorded speeds no rider of that power rides', () => {
    expect(notesAt(recorded(), 15, 1159)).toMatch(/takes 1,159 W in the mean, you ride at 100 W/);
    expect(notesAt(recorded(), 15, 150)).toBe('');
  });

  it('says that recorded speeds have their wind in them', () => {
    const wind = { as: 'along', headwindKmh: 40 } as const;
    expect(notesAt(recorded({ wind }), 15)).toMatch(/have their wind in them/);
    expect(notesAt(onTrack({ days: 1, ridingHours: 3.3, wind }, timed), 15)).toBe('');
  });
});
