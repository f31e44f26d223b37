import { describe, expect, it } from 'vitest';
import type { TrackPace } from '../../shared-types/tour.ts';
import { trackNotes } from '../../shared-types/track-notes.ts';

const notes = (heightShare: number, timedShare: number, pace: TrackPace = 'computed'): string[] =>
  trackNotes({ heightShare, timedShare, heightsM: heightShare === 0 ? [] : [420, 560] }, pace).map((note) =>
    note.replaceAll('\u202f', ' '),
  );

describe('trackNotes()', () => {
  it('has nothing to say of a whole recording', () => {
    expect(notes(1, 1)).toEqual([]);
  });

  it('says when only the grades of a track were kept', () => {
    expect(trackNotes({ heightShare: 1, timedShare: 0, heightsM: [] }, 'computed')).toEqual([
      expect.stringMatching(/taken in by an earlier version/),
    ]);
  });

  it('says when a track has neither heights nor speeds', () => {
    expect(notes(0, 0)).toEqual([
      'This track carries no heights, or too few: slopes come from the terrain class.',
      'This track carries no recorded speeds: it is ridden at your power.',
    ]);
  });

  it.each(['computed', 'recorded'] as const)(
    'takes the slopes of the class without heights or speeds, %s',
    (pace) => {
      expect(notes(0, 0, pace)[0]).toMatch(/: slopes come from the terrain class\.$/);
    },
  );

  it('says that recorded speeds without heights are taken as level', () => {
    expect(notes(0, 1, 'recorded')).toEqual([
      'This track carries no heights, or too few: it is taken as level.',
    ]);
    expect(notes(0, 0.999, 'recorded')[0]).toMatch(/: it is taken as level\.$/);
    expect(notes(0, 0.4, 'recorded')[0]).toMatch(
      /: it is taken as level where a speed is recorded, and elsewhere slopes come from the terrain class\.$/,
    );
    expect(notes(0, 1, 'computed')[0]).toMatch(/: slopes come from the terrain class\.$/);
  });

  it('never writes nearly all as all', () => {
    expect(notes(0.004, 1)[0]).toMatch(/^Nearly all of its points carry no height/);
    expect(notes(1, 0.994)[0]).toMatch(/on 99 % of its distance/);
  });

  it('says how many points lack a height', () => {
    expect(notes(0.88, 1)).toEqual([
      '12 % of its points carry no height: the slope there runs straight between those that do.',
    ]);
  });

  it('never writes a small share as none', () => {
    expect(notes(0.9999, 0.001)).toEqual([
      'Less than 1 % of its points carry no height: the slope there runs straight between those that do.',
      'This track carries recorded speeds on less than 1 % of its distance; the rest is ridden at your power.',
    ]);
  });

  it('says on how much of the distance there are speeds', () => {
    expect(notes(1, 0.4)).toEqual([
      'This track carries recorded speeds on 40 % of its distance; the rest is ridden at your power.',
    ]);
  });

  it('passes over the few metres of a stop', () => {
    expect(notes(1, 0.996)).toEqual([]);
    expect(notes(1, 0.99)).toHaveLength(1);
  });
});
