import { beforeEach, describe, expect, it } from 'vitest';
import type { Item } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { LegRideState } from '../../../src-renderer/state/leg-ride.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { Rows } from '../../../src-renderer/state/rows.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('LegRideState', () => {
  let workbench: FakeWorkbench;
  let notices: NoticesState;
  let tours: Rows<Tour>;
  let items: Rows<Item>;
  let scenarios: Rows<Scenario>;
  let place: number;
  let read: Set<string>;
  let ride: LegRideState;
  beforeEach(() => {
    workbench = new FakeWorkbench();
    notices = new NoticesState();
    [tours, items, scenarios] = [new Rows(), new Rows(), new Rows()];
    tours.fill([...workbench.catalogue.tours]);
    items.fill([...workbench.catalogue.items]);
    scenarios.fill([...workbench.catalogue.scenarios]);
    place = 0;
    read = new Set();
    const noting = <T>(name: string, value: () => T) => {
      return (): T => {
        read.add(name);
        return value();
      };
    };
    ride = new LegRideState(new Calls(workbench.invoke, notices), {
      tour: noting('tour', () => tours.find('demo-tour')),
      place: noting('place', () => place),
      items: noting('items', () => items.all),
      scenarios: noting('scenarios', () => scenarios.all),
    });
  });

  const asked = (): number => workbench.count('tours.legRide');

  it.each([
    ['that is not stored yet', () => (place = 99)],
    ['while there is no scenario', () => scenarios.fill([])],
    [
      'on which nobody rides',
      () => tours.put({ ...tours.all[0]!, legs: [{ ...tours.all[0]!.legs[0]!, ridingHours: 0 }] }),
    ],
  ])('asks nothing about a leg %s', async (_, change) => {
    change();
    await ride.run();
    expect([asked(), ride.shown, ride.failure, ride.updating]).toEqual([0, null, null, false]);
    expect(notices.shown).toEqual([]);
  });

  it('shows nothing more of a leg on which riding ends', async () => {
    await ride.run();
    tours.put({ ...tours.all[0]!, legs: [{ ...tours.all[0]!.legs[0]!, ridingHours: 0 }] });
    await ride.run();
    expect([asked(), ride.shown]).toEqual([1, null]);
  });

  it('keeps the old answer readable beside a failure', async () => {
    await ride.run();
    const old = ride.shown;
    workbench.catalogue.tours.length = 0;
    await ride.run();
    expect([ride.shown, ride.failure?.message]).toEqual([old, 'There is no such leg.']);
  });

  it('keeps with each answer what it was asked', async () => {
    place = 1;
    await ride.run();
    expect(ride.shown).toMatchObject({
      question: { tourId: 'demo-tour', leg: 1, scenarioId: 'demo-hub' },
      ride: { leg: tours.all[0]!.legs[1]!.label, scenario: scenarios.find('demo-hub')!.label },
    });
  });

  it('starts with the first scenario that carries a hub', () => {
    expect(ride.scenario?.id).toBe('demo-hub');
    expect(scenarios.all[0]!.id).not.toBe('demo-hub');
  });

  it('starts with the first scenario where none carries a hub', () => {
    scenarios.drop('demo-hub');
    expect(ride.scenario).toBe(scenarios.all[0]);
  });

  it('keeps to the chosen scenario until that is removed', () => {
    ride.chosenId = 'demo-panel';
    expect(ride.scenario?.id).toBe('demo-panel');
    scenarios.drop('demo-panel');
    expect(ride.scenario?.id).toBe('demo-hub');
  });

  // An effect asks again when anything changes that was read while it ran.
  it('reads all that its answer rests on while it follows', () => {
    ride.chosenId = 'demo-panel';
    ride.follow();
    expect([...read].toSorted()).toEqual(['items', 'place', 'scenarios', 'tour']);
  });
});
