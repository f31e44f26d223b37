import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoItems, demoTours } from '../../../db/demo/demo.ts';
import { tourDraft, type Leg, type Tour, type TourDraft } from '../../../shared-types/tour.ts';
import { readSettings } from '../../../src-main/catalogue/settings.ts';
import { findTour, listTours, removeTour, saveTour } from '../../../src-main/catalogue/tours.ts';
import { trackFixture } from '../../support/track-fixture.ts';
import { randomTour } from './random-drafts.ts';
import { opened, openedDemo } from './temporary-catalogue.ts';

const demoTour = demoTours[0]!;
const { id: demoId, ...draft } = demoTour;

const ridden: Leg['terrain'] = {
  as: 'track',
  terrainClass: 'hilly',
  pace: 'computed',
  track: trackFixture(),
};

function withTrack(): TourDraft {
  const [first, ...others] = draft.legs;
  return {
    ...draft,
    legs: [{ ...first!, terrain: ridden }, ...others],
  };
}

describe('saveTour()', () => {
  it('refuses to leave an unknown item at home', () => {
    const { read, write } = openedDemo();
    const outcome = saveTour(write, { ...draft, leftAtHome: ['demo-phone', 'gone'] }, 'another');
    expect(outcome).toMatchObject({
      ok: false,
      error: { code: 'not-found', fields: [{ path: 'tour.leftAtHome.1', got: '"gone"' }] },
    });
    expect(listTours(read)).toEqual(demoTours);
  });

  it('keeps the old tour when the new one breaks a rule', () => {
    const { read, write } = openedDemo();
    expect(() => saveTour(write, { ...draft, startDate: '2027-02-30' }, demoId)).toThrow(/CHECK constraint/);
    expect(findTour(read, demoId)).toEqual(demoTour);
  });

  it('gives a new tour an id of its own', () => {
    const { read, write } = openedDemo();
    const outcome = saveTour(write, draft);
    expect(outcome.ok && findTour(read, outcome.value.id)).toEqual(outcome.ok && outcome.value);
    expect(listTours(read)).toHaveLength(2);
  });

  it('replaces legs, nights and stops by fewer', () => {
    const { read, write } = openedDemo();
    const [first] = draft.legs;
    const shorter = {
      ...draft,
      legs: [{ ...first!, dayStops: [], nights: { ...first!.nights, kinds: ['wall' as const] } }],
    };
    saveTour(write, shorter, demoId);
    expect(findTour(read, demoId)).toEqual({ ...shorter, id: demoId });
  });

  it('stays the chosen tour of the settings when replaced', () => {
    const { read, write } = openedDemo();
    saveTour(write, { ...draft, label: 'Renamed' }, demoId);
    expect(readSettings(read)?.tourId).toBe(demoId);
  });

  it('keeps the track of a leg, piece by piece', () => {
    const { read, write } = openedDemo();
    saveTour(write, withTrack(), demoId);
    expect(findTour(read, demoId)?.legs[0]?.terrain).toEqual(ridden);
  });

  it('forgets a track that was taken out', () => {
    const { read, write } = openedDemo();
    saveTour(write, withTrack(), demoId);
    saveTour(write, draft, demoId);
    expect(findTour(read, demoId)).toEqual(demoTour);
    expect(read.prepare('SELECT count(*) FROM leg_track_pieces WHERE leg_position = 0').pluck().get()).toBe(
      0,
    );
  });

  it('gives any tour back exactly as it was saved', () => {
    const { read, write } = openedDemo();
    removeTour(write, demoId);
    const itemIds = demoItems.map((item) => item.id);
    fc.assert(
      fc.property(randomTour(itemIds), (random) => {
        expect(tourDraft.safeParse(random).success).toBe(true);
        const saved: Tour = { ...random, id: 'random' };
        expect(saveTour(write, random, 'random')).toEqual({ ok: true, value: saved });
        expect(listTours(read)).toEqual([saved]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('removeTour()', () => {
  it('is null for an id that names nothing', () => {
    expect(removeTour(opened().write, 'gone')).toBeNull();
  });

  it('gives back the tour, which can be put back', () => {
    const { read, write } = openedDemo();
    expect(removeTour(write, demoId)).toEqual(demoTour);
    expect(listTours(read)).toEqual([]);
    saveTour(write, draft, demoId);
    expect(listTours(read)).toEqual([demoTour]);
  });

  it('takes everything of the tour with it', () => {
    const { read, write } = openedDemo();
    saveTour(write, { ...withTrack(), leftAtHome: ['demo-phone'] }, demoId);
    removeTour(write, demoId);
    const tables = ['legs', 'leg_nights', 'day_stops', 'leg_tracks', 'leg_track_pieces', 'tour_left_at_home'];
    const left = tables.map((table) => read.prepare(`SELECT count(*) FROM ${table}`).pluck().get());
    expect(left).toEqual(tables.map(() => 0));
  });

  it('leaves the settings without a chosen tour', () => {
    const { read, write } = openedDemo();
    removeTour(write, demoId);
    expect(readSettings(read)?.tourId).toBeNull();
  });
});

describe('listTours()', () => {
  it('orders by label without regard to case, then id', () => {
    const { read, write } = opened();
    const labels = { c: 'north cape', b: 'Alps', a: 'North cape' };
    for (const [id, label] of Object.entries(labels)) saveTour(write, { ...draft, label }, id);
    expect(listTours(read).map((tour) => tour.id)).toEqual(['b', 'a', 'c']);
  });
});

describe('findTour()', () => {
  it('is null for an id that names nothing', () => {
    expect(findTour(opened().read, 'gone')).toBeNull();
  });
});
