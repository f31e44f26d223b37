import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../../db/demo/demo.ts';
import type { CallInput } from '../../../../shared-types/contract.ts';
import { withHistories } from '../../../support/demo-ground.ts';
import { openedWorkbench, type TestWorkbench } from '../../../support/open-workbench.ts';

type Asked = CallInput<'upgrade.check'>;
const one = (itemId: string) => ({ itemId, quantity: 1 });
const panel: Asked = {
  runId: 'spec',
  base: { as: 'owned' },
  add: [one('demo-panel-20')],
  remove: [],
  tourIds: null,
};

/** Few histories in long steps: a week of the demo with few walls, and three days with a wall each night. */
async function quick(): Promise<TestWorkbench> {
  const workbench = openedWorkbench();
  await workbench.value('settings.save', { settings: { ...withHistories(30), stepMinutes: '60' } });
  const { id, ...tour } = demoTours[0]!;
  const [hills, , steppe] = tour.legs;
  const walls = { ...hills!.nights, kinds: ['wall' as const] };
  await workbench.value('tours.save', {
    id,
    tour: { ...tour, label: 'Steppe', legs: [{ ...steppe!, days: 7 }] },
  });
  await workbench.value('tours.save', {
    tour: { ...tour, label: 'Hills', legs: [{ ...hills!, days: 3, nights: walls }] },
  });
  return workbench;
}

describe('upgrade.check', { timeout: 60_000 }, () => {
  it.each<[string, Partial<Asked>, string]>([
    ['no item at all', { add: [] }, 'bad-input'],
    ['an item twice', { add: [one('demo-panel-20'), one('demo-panel-20')] }, 'bad-input'],
    ['no tour chosen', { tourIds: [] }, 'bad-input'],
    ['a tour that is not there', { tourIds: ['gone'] }, 'not-found'],
    ['a scenario that is not there', { base: { as: 'scenario', scenarioId: 'gone' } }, 'not-found'],
  ])('refuses %s', async (_, changes, code) => {
    const { call } = openedWorkbench();
    expect(await call('upgrade.check', { ...panel, ...changes })).toMatchObject({
      ok: false,
      error: { code },
    });
  });

  it('says that there is no tour to check on', async () => {
    const { call, value } = openedWorkbench();
    await value('tours.remove', { id: 'demo-tour' });
    expect(await call('upgrade.check', panel)).toMatchObject({
      ...{ ok: false, error: { code: 'not-found', message: /no tour/ } },
    });
  });

  it('stops by the name of its run', async () => {
    const { call, value } = openedWorkbench();
    const checking = call('upgrade.check', panel);
    expect(await value('runs.cancel', { runId: 'spec' })).toEqual({ cancelled: true });
    expect(await checking).toMatchObject({ ok: false, error: { code: 'cancelled' } });
  });

  it('judges an item more on every tour, with its price and its grams', async () => {
    const { value } = await quick();
    const result = await value('upgrade.check', panel);
    expect(result).toMatchObject({
      ...{ base: 'the kit as owned', change: '20 W folding panel', notes: [], histories: 30 },
      money: { net: { minor: 8400, currency: 'EUR' } },
    });
    expect(result.grams.after - result.grams.before).toBe(560);
    expect(result.tours.map(({ label }) => label)).toEqual(['Hills', 'Steppe']);
    expect(result.cautions.join()).toMatch(/shade behind the panel/);
    for (const { margin } of result.tours) {
      expect(margin.after).toBeGreaterThanOrEqual(margin.before);
      expect(margin.low).toBeLessThanOrEqual(margin.difference);
      expect(margin.high).toBeGreaterThanOrEqual(margin.difference);
    }
  });

  it('finds no difference where an item takes the place of itself', async () => {
    const { value } = await quick();
    const swap = { ...panel, add: [one('demo-bank-10')], remove: [one('demo-bank-10')] };
    const { tours, money, verdict } = await value('upgrade.check', swap);
    expect(money.net.minor).toBe(0);
    expect(verdict.is).toBe('not-for-these');
    for (const tour of tours) expect(tour).toMatchObject({ changesNothing: true, effect: 'no-odds' });
  });

  it('agrees with the comparison on the margins', async () => {
    const { value } = await quick();
    const tourId = 'demo-tour';
    const base = { as: 'scenario', scenarioId: 'demo-banks' } as const;
    const { tours } = await value('upgrade.check', { ...panel, base, tourIds: [tourId] });
    const { scenarios } = await value('comparison.run', { runId: 'b', tourId, scenarioIds: ['demo-banks'] });
    const [compared] = scenarios;
    // Both find a margin from below, to a quarter of a point.
    expect(Math.abs(tours[0]!.margin.before - compared!.margin.value)).toBeLessThanOrEqual(0.0026);
    expect(tours[0]!.risk.before).toEqual(compared!.risk);
    expect(tours[0]!.minutesLost.before).toBeCloseTo(compared!.values.minutesLost, 9);
  });

  it('notes a hub without its converter, which gives nothing', async () => {
    const { value } = await quick();
    const { notes, tours } = await value('upgrade.check', { ...panel, add: [one('demo-hub-3')] });
    expect(notes).toEqual(['This kit has no converter: the hub turns and gives nothing.']);
    for (const { changesNothing, marginText } of tours)
      expect([changesNothing, marginText]).toEqual([true, 'no difference']);
  });
});
