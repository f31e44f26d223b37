import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings } from '../../../db/demo/demo.ts';
import type { Item } from '../../../shared-types/item.ts';
import type { LegRide } from '../../../shared-types/leg-ride.ts';
import type { Leg, Tour } from '../../../shared-types/tour.ts';
import { legRide } from '../../../src-main/workbench/leg-ride.ts';
import { expectNear } from '../../support/near.ts';
import { trackOf } from '../../support/track-fixture.ts';
import { legFixture, stationFixture, tourFixture } from '../../support/station-fixture.ts';

interface Asked {
  readonly leg?: Partial<Leg>;
  readonly legIndex?: number;
  readonly method?: string;
  readonly tour?: Partial<Tour>;
  readonly items?: readonly Item[];
}

function ask({ leg = {}, legIndex = 0, method = 'hub', tour = {}, items = demoItems }: Asked) {
  return legRide({ ...tourFixture([legFixture(leg)]), ...tour }, legIndex, {
    stations: [stationFixture('Plain')],
    items,
    scenario: demoScenarios.find((scenario) => scenario.method === method)!,
    settings: demoSettings,
  });
}

function rideOf(asked: Asked): LegRide {
  const outcome = ask(asked);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}

/** Two pieces: level, then uphill at 6 %. */
const hillTrack = trackOf([
  [{ gradePct: 0, speedKmh: null, share: 1 }],
  [{ gradePct: 6, speedKmh: null, share: 1 }],
]);
const onTrack = (track = hillTrack, pace: 'recorded' | 'computed' = 'computed'): Partial<Leg> => ({
  terrain: { as: 'track', terrainClass: 'rolling', pace, track },
});

describe('legRide()', () => {
  it.each([
    { what: 'a leg that is not there', asked: { legIndex: 4 } },
    {
      what: 'a station that is not there',
      asked: { leg: { place: { as: 'station' as const, station: 'Gone' } } },
    },
  ])('says that it knows nothing of $what', ({ asked }) => {
    expect(ask(asked)).toMatchObject({ ok: false, error: { code: 'not-found' } });
  });

  it('has no minutes and no energy on a leg without riding', () => {
    const { on, hub, days } = rideOf({ leg: { ridingHours: 0 } });
    expect([on?.laterMinADay, on?.kmADay, hub?.meanWhADay]).toEqual([0, 0, 0]);
    expect(days.every(({ hubWh }) => hubWh === 0)).toBe(true);
  });

  it('parts what the grams cost from what the hub’s drag costs', () => {
    const { bare, loaded, off, on } = rideOf({});
    expect(bare.laterMinADay).toBe(0);
    expect(loaded.laterMinADay).toBeGreaterThan(0);
    expect(off!.laterMinADay).toBeGreaterThan(loaded.laterMinADay);
    expect(on!.laterMinADay).toBeGreaterThan(off!.laterMinADay);
    expectNear(on!.laterMinADay, 360 * (bare.speedKmh / on!.speedKmh - 1), 1e-9, 'minutes');
  });

  it('has no hub to tell of under a kit without one, only its grams', () => {
    const ride = rideOf({ method: 'panel' });
    expect([ride.off, ride.on, ride.hub]).toEqual([null, null, null]);
    expect(ride.loaded.laterMinADay).toBeGreaterThan(0);
    expect(ride.days.every(({ hubWh }) => hubWh === 0)).toBe(true);
  });

  it('turns a hub without a converter, which then gives nothing', () => {
    const items = demoItems.filter(({ kind }) => kind !== 'converter');
    const { hub, on, off } = rideOf({ items });
    expect(hub).toMatchObject({ converter: null, meanWhADay: 0, startSpeedKmh: null, aboveStartShare: 0 });
    expect(on).toEqual(off);
  });

  it('tells days apart on a track and not on a terrain class', () => {
    expect(rideOf({}).hub!.daysWh).toBeNull();
    const { hub, days } = rideOf({ leg: onTrack() });
    expect(days.map(({ date }) => date)[0]).toBe('2027-05-03');
    expect(days).toHaveLength(7);
    expect(days[0]!.hubWh).toBeGreaterThan(days[6]!.hubWh);
    expect(hub!.daysWh!.p10).toBeLessThan(hub!.daysWh!.p90);
    expect(hub!.daysWh!.p50).toBe(days.map(({ hubWh }) => hubWh).toSorted((a, b) => a - b)[3]);
  });

  it('counts the days on which the hub alone falls short', () => {
    const { hub, days, needWhADay } = rideOf({ leg: onTrack() });
    expect(needWhADay).toBeGreaterThan(0);
    expect(hub!.shortDays).toBe(days.filter(({ hubWh }) => hubWh < needWhADay).length);
    expect(rideOf({ leg: onTrack(), tour: { riderW: 40 } }).hub!.shortDays).toBe(7);
  });

  it('shares out the riding time over the speeds, and the way over the grades', () => {
    for (const leg of [{}, onTrack()]) {
      const { speeds, grades } = rideOf({ leg });
      expectNear(
        speeds.reduce((sum, { share }) => sum + share, 0),
        1,
        1e-9,
        'time',
      );
      expectNear(
        grades.reduce((sum, { share }) => sum + share, 0),
        1,
        1e-9,
        'distance',
      );
      expect(grades.map(({ gradePct }) => gradePct)).toEqual(
        grades.map(({ gradePct }) => gradePct).toSorted((a, b) => a - b),
      );
    }
  });

  it('says where the rider’s power goes', () => {
    const { power } = rideOf({});
    const { riderW, ...parts } = power;
    expectNear(
      Object.values(parts).reduce((sum, watts) => sum + watts, 0),
      riderW,
      1e-9,
      'parts',
    );
    expect(power.hubW).toBeGreaterThan(0);
    expect(rideOf({ method: 'panel' }).power.hubW).toBe(0);
  });

  it('rides as recorded where the rider asks for it', () => {
    const timed = trackOf([[{ gradePct: 0, speedKmh: 15, share: 1 }]]);
    expectNear(rideOf({ leg: onTrack(timed, 'recorded') }).bare.speedKmh, 15, 1e-9, 'speed');
    expect(rideOf({ leg: onTrack(timed, 'computed') }).bare.speedKmh).toBeGreaterThan(16);
  });

  it('takes the slopes of the class for a track without heights', () => {
    const flat = { ...trackOf([[{ gradePct: 0, speedKmh: null, share: 1 }]]), heightShare: 0, heightsM: [] };
    const { grades, notes } = rideOf({ leg: onTrack(flat) });
    expect(grades.length).toBeGreaterThan(1);
    expect(notes.join(' ')).toMatch(/no heights/);
  });

  it('says when the track takes other hours than planned', () => {
    expect(rideOf({ leg: { ...onTrack(), days: 2 } }).notes.join(' ')).not.toMatch(/The track takes/);
    expect(rideOf({ leg: { ...onTrack(), days: 7 } }).notes.join(' ')).toMatch(/The track takes/);
  });

  it('rides slower against the wind, and more slowly round in it', () => {
    const speed = (wind: Leg['wind']) => rideOf({ leg: { wind } }).bare.speedKmh;
    const calm = speed({ as: 'calm' });
    expect(speed({ as: 'along', headwindKmh: 15 })).toBeLessThan(calm);
    expect(speed({ as: 'along', headwindKmh: -15 })).toBeGreaterThan(calm);
    expect(speed({ as: 'around', windKmh: 15 })).toBeLessThan(calm);
  });

  it('rides faster in the thin air of a high place', () => {
    const at = (elevationM: number) =>
      rideOf({ leg: { place: { as: 'coordinates', latDeg: 45, lonDeg: 10, elevationM } } }).bare.speedKmh;
    expect(at(3500)).toBeGreaterThan(at(100));
  });
});
