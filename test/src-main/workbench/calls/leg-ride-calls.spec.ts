import { describe, expect, it } from 'vitest';
import { valleyRide } from '../../../support/gpx-text.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';

const asked = { tourId: 'demo-tour', leg: 1, scenarioId: 'demo-hub' } as const;

describe('tours.legRide', { timeout: 30_000 }, () => {
  it('refuses a leg before the first', async () => {
    const { call } = openedWorkbench();
    expect(await call('tours.legRide', { ...asked, leg: -1 })).toMatchObject({
      ok: false,
      error: { code: 'bad-input', fields: [{ path: 'leg', allowed: 'the number of a leg' }] },
    });
  });

  it.each([
    { what: 'tour', input: { ...asked, tourId: 'gone' } },
    { what: 'scenario', input: { ...asked, scenarioId: 'gone' } },
    { what: 'leg', input: { ...asked, leg: 59 } },
  ])('says so when the $what is not there', async ({ input }) => {
    const { call, faults } = openedWorkbench();
    expect(await call('tours.legRide', input)).toMatchObject({ ok: false, error: { code: 'not-found' } });
    expect(faults).toEqual([]);
  });

  it('shows the hub as the comparison counts it', async () => {
    const { value } = openedWorkbench();
    const ride = await value('tours.legRide', asked);
    const comparison = await value('comparison.run', {
      runId: 'spec',
      tourId: 'demo-tour',
      scenarioIds: ['demo-hub'],
    });
    const leg = comparison.scenarios[0]!.legs[asked.leg]!;
    expect(ride.hub!.meanWhADay).toBeCloseTo(leg.hubWh, 6);
    expect(ride.loaded.laterMinADay).toBeCloseTo(leg.massMinutes, 9);
    expect(ride.on!.laterMinADay - ride.loaded.laterMinADay).toBeCloseTo(leg.dragMinutes, 9);
    expect(ride.off!.laterMinADay - ride.loaded.laterMinADay).toBeCloseTo(leg.offMinutes, 9);
  });

  it('follows what is stored of the tour and of the hub', async () => {
    const { value } = openedWorkbench();
    const before = await value('tours.legRide', asked);
    const [tour] = await value('tours.list', {});
    const { id, ...draft } = tour!;
    await value('tours.save', { id, tour: { ...draft, riderW: draft.riderW + 40 } });
    const faster = await value('tours.legRide', asked);
    expect(faster.bare.speedKmh).toBeGreaterThan(before.bare.speedKmh);
    await value('items.setState', { id: 'demo-hub-3', state: 'retired' });
    expect((await value('tours.legRide', asked)).hub).toBeNull();
  });

  it('rides a GPX taken in part by part at its recorded moving speeds', async () => {
    const { value } = openedWorkbench();
    const { trackId } = await value('tracks.begin', { name: 'valley.gpx', bytes: 0 });
    await value('tracks.add', { trackId, text: valleyRide() });
    const track = await value('tracks.finish', { trackId });
    const [{ id, ...draft }] = (await value('tours.list', {})) as [
      Awaited<ReturnType<typeof value<'tours.list'>>>[number],
    ];
    const terrain = {
      as: 'track' as const,
      terrainClass: 'rolling' as const,
      pace: 'recorded' as const,
      track,
    };
    await value('tours.save', { id, tour: { ...draft, legs: [{ ...draft.legs[0]!, terrain }] } });
    const ride = await value('tours.legRide', { ...asked, leg: 0 });
    // 5 km at 18, 2.5 km at 36 and 3 km at 21.6 km/h, the stop and the pause taken out: 10.5 km in 0.4861 h.
    expect(ride.bare.speedKmh).toBeCloseTo(21.6, 1);
    expect(ride.on!.laterMinADay).toBeGreaterThan(ride.off!.laterMinADay);
  });

  it('calls a hub short that the simulation finds short', async () => {
    const { value } = openedWorkbench();
    const [{ id, ...draft }] = (await value('tours.list', {})) as [
      Awaited<ReturnType<typeof value<'tours.list'>>>[number],
    ];
    const flat = {
      ...draft.legs[2]!,
      days: 60,
      ridingHours: 9,
      nights: { ...draft.legs[2]!.nights, kinds: ['none' as const] },
      dayStops: [],
    };
    await value('tours.save', { id, tour: { ...draft, legs: [flat] } });
    const { hub, days, needWhADay } = await value('tours.legRide', { ...asked, leg: 0 });
    const { scenarios } = await value('comparison.run', {
      runId: 'spec',
      tourId: id,
      scenarioIds: ['demo-hub'],
    });
    const short = scenarios[0]!.days.some(({ unserved }) => unserved > 0);
    // No wall but the first: what the hub gives is what there is, once losses are counted.
    expect(days[0]!.hubWh < needWhADay).toBe(short);
    expect(hub!.shortDays > 0).toBe(short);
  });
});
