import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Item } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { LegSunState } from '../../../src-renderer/state/leg-sun.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { Rows } from '../../../src-renderer/state/rows.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('LegSunState', () => {
  let workbench: FakeWorkbench;
  let notices: NoticesState;
  let tours: Rows<Tour>;
  let items: Rows<Item>;
  let scenarios: Rows<Scenario>;
  let place: number;
  let read: Set<string>;
  let sun: LegSunState;
  beforeEach(() => {
    vi.useFakeTimers();
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
    sun = new LegSunState(new Calls(workbench.invoke, notices), {
      tour: noting('tour', () => tours.find('demo-tour')),
      place: noting('place', () => place),
      items: noting('items', () => items.all),
      scenarios: noting('scenarios', () => scenarios.all),
      sky: noting('sky', () => workbench.catalogue.settings.sky),
    });
  });
  afterEach(() => vi.useRealTimers());

  const asked = (): number => workbench.count('tours.legSun');
  const pause = (): Promise<unknown> => vi.advanceTimersByTimeAsync(1000);
  const panelId = (): string => scenarios.all.find(({ method }) => method === 'panel')!.id;

  it('asks nothing about a leg that is not stored yet', async () => {
    place = 99;
    await sun.run();
    expect([asked(), sun.leg, sun.shown, sun.failure, sun.updating]).toEqual([
      0,
      undefined,
      null,
      null,
      false,
    ]);
    expect(notices.shown).toEqual([]);
  });

  it('keeps the old answer readable beside a failure', async () => {
    await sun.run();
    const old = sun.shown;
    workbench.catalogue.tours.length = 0;
    await sun.run();
    expect([sun.shown, sun.failure?.message]).toEqual([old, 'There is no such leg.']);
    await sun.run();
    expect(sun.updating).toBe(false);
  });

  it('never lets a late answer replace a newer one', async () => {
    workbench.hold('tours.legSun');
    const older = sun.run();
    sun.chosenBy = 'month';
    const newer = sun.run();
    await vi.advanceTimersByTimeAsync(0);
    workbench.release(1);
    await newer;
    workbench.release(0);
    await older;
    expect([sun.shown?.question.by, sun.updating]).toEqual(['month', false]);
  });

  it('keeps with each answer what it was asked', async () => {
    place = 1;
    await sun.run();
    sun.chosenBy = 'month';
    const { legs, startDate } = tours.all[0]!;
    expect(sun.shown).toMatchObject({
      question: { tourId: 'demo-tour', leg: 1, by: 'day' },
      leg: legs[1],
      sun: { leg: legs[1]!.label },
    });
    expect(sun.shown!.firstDate > startDate).toBe(true);
    expect(sun.shown!.sun.periods[0]!.date).toBe(sun.shown!.firstDate);
  });

  it('starts as the first scenario with a panel lays it', () => {
    expect(sun.lying).toEqual({ as: 'scenario', scenarioId: panelId() });
  });

  it('returns to the start when the chosen scenario is removed', () => {
    const [first] = scenarios.all;
    sun.chosenLying = { as: 'scenario', scenarioId: first!.id };
    expect(sun.lying).toEqual(sun.chosenLying);
    scenarios.drop(first!.id);
    expect(sun.lying).not.toEqual(sun.chosenLying);
  });

  it('starts a long leg with the months of the year', () => {
    const [tour] = tours.all;
    tours.put({ ...tour!, legs: [{ ...tour!.legs[0]!, days: 200 }] });
    expect(sun.by).toBe('month');
    sun.chosenBy = 'day';
    expect(sun.by).toBe('day');
  });

  // An effect asks again when anything changes that was read while it ran.
  it('reads all that its answer rests on while it follows', () => {
    sun.chosenLying = { as: 'aimed' };
    sun.chosenBy = 'month';
    sun.follow();
    expect([...read].toSorted()).toEqual(['items', 'place', 'scenarios', 'sky', 'tour']);
  });

  it('is updating, with the old answer, until the new is there', async () => {
    await sun.run();
    const old = sun.shown;
    workbench.hold('tours.legSun');
    sun.follow();
    await pause();
    expect([sun.updating, sun.shown]).toEqual([true, old]);
    workbench.release(0);
    await pause();
    expect(sun.updating).toBe(false);
    expect(sun.shown).not.toBe(old);
  });

  it('asks once for a burst of changes', async () => {
    for (let i = 0; i < 5; i += 1) sun.follow();
    await pause();
    expect([asked(), sun.updating]).toEqual([1, false]);
  });

  it('shows nothing more of a leg that went', async () => {
    await sun.run();
    tours.put({ ...tours.all[0]!, legs: [] });
    sun.follow();
    expect(sun.updating).toBe(false);
    await pause();
    expect([asked(), sun.shown, sun.failure]).toEqual([1, null, null]);
  });
});
