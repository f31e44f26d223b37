import { beforeEach, describe, expect, it } from 'vitest';
import type { StopSituation } from '../../../shared-types/stop-plan.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { StopPlannerState } from '../../../src-renderer/state/stop-planner.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('StopPlannerState', () => {
  let workbench: FakeWorkbench;
  let tours: Tour[];
  let stop: StopPlannerState;
  beforeEach(() => {
    workbench = new FakeWorkbench();
    const { catalogue } = workbench;
    tours = [...catalogue.tours];
    stop = new StopPlannerState(new Calls(workbench.invoke, new NoticesState()), {
      tours: () => tours,
      tour: () => tours[0] ?? null,
      scenarios: () => catalogue.scenarios,
      items: () => catalogue.items,
    });
  });

  const asked = (): StopSituation => workbench.calls.at(-1)!.input as StopSituation;

  it.each([
    ['tour', () => tours.splice(0)],
    ['scenario', () => workbench.catalogue.scenarios.splice(0)],
  ])('asks nothing while there is no %s', async (_, empty) => {
    empty();
    await stop.run();
    expect([workbench.count('stops.plan'), stop.shown, stop.pieces]).toEqual([0, null, []]);
  });

  it('asks at once about a day stop of the first leg, with all half full', async () => {
    await stop.run();
    const [tour] = workbench.catalogue.tours;
    const place = tour!.legs[0]!.dayStops.find(({ outlets }) => outlets > 0);
    expect(asked()).toMatchObject({ minutes: place!.minutes, outlets: place!.outlets });
    expect(asked().states.map(({ state }) => (state.as === 'share' ? state.share : state.lit))).toSatisfy(
      (all: number[]) => all.every((value) => value === 0.5 || value === 2),
    );
    expect(stop.shown?.minutes).toBe(place!.minutes);
  });

  it('asks for each bank of the chosen scenario by its lights', async () => {
    stop.chosenScenarioId = 'demo-hub';
    stop.place('lit.demo-bank-20#0', 3);
    await stop.run();
    const banks = asked().states.filter(({ itemId }) => itemId.includes('bank'));
    expect(banks).toEqual([{ itemId: 'demo-bank-20', copy: 0, state: { as: 'lights', lit: 3 } }]);
  });

  it('keeps the last plan while a field is in error, and says what is allowed there', async () => {
    await stop.run();
    const plan = stop.shown;
    stop.set('share.demo-phone#0', 1.5);
    stop.set('minutes', NaN);
    await stop.run();
    expect(stop.shown).toEqual(plan);
    expect(stop.errorAt('share.demo-phone#0')).toBe('a number from 0 to 1');
    expect(stop.errorAt('minutes')).toBe('a whole number from 5 to 600 min');
    stop.set('minutes', 30);
    stop.set('share.demo-phone#0', 0.1);
    await stop.run();
    expect([stop.shown?.minutes, stop.errors]).toEqual([30, []]);
  });

  it("asks for the rider's own use of each device", async () => {
    stop.chooseUse('own');
    stop.set('needWh.demo-phone#0', 12);
    await stop.run();
    const { use } = asked();
    const needs = use.as === 'own' ? use.needs : [];
    expect(needs.find(({ itemId }) => itemId === 'demo-phone')?.needWh).toBe(12);
    expect(needs.filter(({ needWh }) => needWh > 0)).toHaveLength(1);
    expect(stop.at('needWh.demo-camera#0')).toBe(0);
  });

  it('takes over the stop of another leg, and keeps what is in the batteries', async () => {
    stop.set('share.demo-phone#0', 0.3);
    stop.set('minutes', 5);
    stop.chooseLeg(1);
    await stop.run();
    expect(asked().use).toEqual({ as: 'leg', leg: 1 });
    expect(asked().minutes).not.toBe(5);
    expect(stop.at('share.demo-phone#0')).toBe(0.3);
  });

  it('shows a failure beside the last plan', async () => {
    await stop.run();
    const plan = stop.shown;
    // Stored no more, while the page has not heard of it yet.
    workbench.catalogue.tours.length = 0;
    await stop.run();
    expect([stop.shown, stop.failure?.code]).toEqual([plan, 'not-found']);
  });
});
