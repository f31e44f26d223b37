import { describe, expect, it } from 'vitest';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { OnTourState } from '../../../src-renderer/state/on-tour.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

function begun(hasToday: boolean) {
  const workbench = new FakeWorkbench();
  const { tours, scenarios, items } = workbench.catalogue;
  const onTour = new OnTourState(new Calls(workbench.invoke, new NoticesState()), {
    log: { hasToday },
    readings: () => [],
    tour: () => tours[0] ?? null,
    scenarios: () => scenarios,
    items: () => items,
  });
  return { workbench, onTour };
}

describe('OnTourState', () => {
  it('asks nothing while today has no reading', async () => {
    const { workbench, onTour } = begun(false);
    await onTour.run();
    expect([workbench.count('readings.onTour'), onTour.shown]).toEqual([0, null]);
  });

  it('asks about the first scenario by the date, or as the rider chooses', async () => {
    const { workbench, onTour } = begun(true);
    await onTour.run();
    expect(workbench.calls.at(-1)?.input).toEqual({
      tourId: 'demo-tour',
      scenarioId: workbench.catalogue.scenarios[0]!.id,
      day: null,
    });
    onTour.chosenScenarioId = 'demo-hub';
    onTour.day = 5;
    await onTour.run();
    expect(workbench.calls.at(-1)?.input).toMatchObject({ scenarioId: 'demo-hub', day: 5 });
    expect(onTour.shown?.usual.days).toBeGreaterThan(0);
  });
});
