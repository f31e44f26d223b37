import { beforeEach, describe, expect, it } from 'vitest';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { TrackDropState, type TrackField } from '../../../src-renderer/state/track-drop.svelte.ts';

const ridge = new File(['<gpx/>'], 'ridge.gpx');

describe('TrackDropState', () => {
  let notices: NoticesState;
  let drop: TrackDropState;
  let taken: string[];
  beforeEach(() => {
    notices = new NoticesState();
    drop = new TrackDropState(notices);
    taken = [];
  });

  const field = (leg: string): TrackField => ({
    leg: () => leg,
    take: ({ name }) => taken.push(`${leg}: ${name}`),
  });

  it('asks for a leg to be opened while none is', () => {
    expect(drop.hint).toBe('Open the leg the track belongs to, then drop it again.');
    drop.drop([ridge]);
    expect(notices.shown).toMatchObject([{ tone: 'failure', text: drop.hint }]);
  });

  it('takes one file at a time, and says so', () => {
    drop.register(field('High plateau'));
    drop.drop([ridge, ridge]);
    expect(taken).toEqual([]);
    expect(notices.shown).toMatchObject([{ text: 'One track is taken at a time: drop a single file.' }]);
  });

  it('takes its word back once a track is begun', () => {
    drop.drop([ridge]);
    drop.news.clear();
    expect(notices.shown).toEqual([]);
  });

  it('makes nothing of a drop without a file', () => {
    drop.over = true;
    drop.drop([]);
    expect([drop.over, notices.shown]).toEqual([false, []]);
  });

  it('names the open leg and hands it the file', () => {
    drop.register(field('High plateau'));
    expect(drop.hint).toBe('Drop the GPX track for the leg ‘High plateau’');
    drop.over = true;
    drop.drop([ridge]);
    expect([taken, drop.over, notices.shown]).toEqual([['High plateau: ridge.gpx'], false, []]);
  });

  it('does without a name for a leg that has none', () => {
    drop.register(field(' '));
    expect(drop.hint).toBe('Drop the GPX track for this leg');
  });

  it('has no leg any more once it is closed', () => {
    drop.register(field('High plateau'))();
    drop.drop([ridge]);
    expect(taken).toEqual([]);
  });

  it('keeps the leg opened last when an earlier one closes after', () => {
    const closeFirst = drop.register(field('Hills'));
    drop.register(field('Steppe'));
    closeFirst();
    drop.drop([ridge]);
    expect(taken).toEqual(['Steppe: ridge.gpx']);
  });
});
