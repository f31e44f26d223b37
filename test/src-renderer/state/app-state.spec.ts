import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { usualItem } from '../../../shared-types/usual-item.ts';
import { AppState } from '../../../src-renderer/state/app-state.svelte.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';
import { startingScenario } from '../../../src-renderer/views/scenarios/new-scenario.ts';
import { startingTour } from '../../../src-renderer/views/tours/new-tour.ts';
import { FakePage } from '../support/fake-page.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('AppState', () => {
  let workbench: FakeWorkbench;
  let page: FakePage;
  let app: AppState;
  beforeEach(async () => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    page = new FakePage();
    app = new AppState(workbench.invoke, page);
    await app.start();
  });
  afterEach(() => vi.useRealTimers());

  const saveNight = (minor: number) => {
    const { money, currency } = app.settings.current!;
    return app.settings.save({ money: { ...money, wallNight: { minor, currency } } });
  };
  const saveOwnShare = (fork: number) => {
    const { frontLoad } = app.settings.current!;
    return app.settings.save({ frontLoad: { ...frontLoad, ownShare: { ...frontLoad.ownShare, fork } } });
  };
  const runs = (): number => workbench.count('comparison.run');
  const pause = (): Promise<unknown> => vi.advanceTimersByTimeAsync(1000);
  const marginOf = (id: string) =>
    app.comparison.current?.scenarios.find((each) => each.id === id)?.margin.value;

  it('starts with every list read and one comparison made', () => {
    expect(app.ready).toBe(true);
    expect(app.inventory.rows.all.length).toBe(workbench.catalogue.items.length);
    expect(app.tour?.id).toBe('demo-tour');
    expect(app.comparison.current?.tour.id).toBe('demo-tour');
    expect(runs()).toBe(1);
  });

  it('starts with nothing at all without a failure', async () => {
    const empty = new FakeWorkbench({
      items: [],
      tours: [],
      scenarios: [],
      settings: { ...workbench.catalogue.settings, tourId: null },
    });
    const bare = new AppState(empty.invoke, new FakePage());
    await bare.start();
    expect([bare.ready, bare.tour, bare.subject, bare.comparison.current]).toEqual([true, null, null, null]);
    expect(bare.notices.shown).toEqual([]);
  });

  it('reads nothing of a catalogue that does not open, and has nothing to lose', async () => {
    const closed = new FakeWorkbench();
    closed.place.fail('damaged');
    const waiting = new AppState(closed.invoke, page);
    await waiting.start();
    expect(closed.calls.map(({ name }) => name)).toEqual(['catalogue.state']);
    expect([waiting.ready, waiting.unsaved, waiting.place.trouble?.fault]).toEqual([false, false, 'damaged']);
  });

  it('says once what the rider should know of the file', async () => {
    const told = new FakeWorkbench();
    told.place.state = { ...told.place.state, notKept: 'Not kept.', backupFault: 'No backup today.' };
    const telling = new AppState(told.invoke, page);
    await telling.start();
    expect(telling.notices.shown.map(({ text }) => text)).toEqual(['Not kept.', 'No backup today.']);
  });

  it('has nothing to lose once another catalogue took the place', async () => {
    app.inventory.newItem.of(usualItem('bank', 'EUR')).set('label', 'A bank to be');
    expect(app.unsaved).toBe(true);
    await app.place.startEmpty();
    expect([app.unsaved, page.reloads]).toEqual([false, 1]);
  });

  it('shows a changed device in the margin at once', async () => {
    const before = marginOf('demo-panel')!;
    await app.inventory.move('demo-camera', 'retired');
    await pause();
    expect(marginOf('demo-panel')).toBeGreaterThan(before);
  });

  it.each([
    ['an item', () => app.inventory.save('demo-phone', draftOf(app.inventory.rows.find('demo-phone')!))],
    ['a tour', () => app.tours.save('demo-tour', draftOf(app.tour!))],
    ['a scenario', () => app.scenarios.save('demo-hub', draftOf(app.scenarios.rows.find('demo-hub')!))],
    ['the currency', () => app.settings.save({ currency: 'JPY' })],
    ['the step', () => app.settings.save({ stepMinutes: '60' })],
    ['the sky', () => app.settings.save({ sky: { ...app.settings.current!.sky, seed: 7 } })],
    ['the risk', () => app.settings.save({ risk: { ...app.settings.current!.risk, useSpread: 0.4 } })],
    ['the interest', () => app.settings.save({ money: { ...app.settings.current!.money, ratePct: 3 } })],
    ['the price of a night', () => saveNight(1500)],
    ['a share of the rider’s own', () => saveOwnShare(0.9)],
  ])('compares again once %s is stored', async (_, save) => {
    await save();
    await pause();
    expect(runs()).toBe(2);
  });

  it('does not compare again for a change of theme', async () => {
    await app.settings.save({ theme: 'dark' });
    await pause();
    expect([runs(), page.themes]).toEqual([1, ['system', 'dark']]);
  });

  it('does not compare again for settings that are the same', async () => {
    const { sky, risk, money, frontLoad } = structuredClone(app.settings.current!);
    await app.settings.save({ sky, risk, money, frontLoad });
    await pause();
    expect(runs()).toBe(1);
  });

  it('compares the tour the rider turns to', async () => {
    const added = await app.tours.add(startingTour('2027-06-01'));
    await app.settings.save({ tourId: added!.id });
    await pause();
    expect(app.comparison.current?.tour.id).toBe(added!.id);
  });

  it('falls back to a tour that is there when the current goes', async () => {
    await app.tours.add(startingTour('2027-06-01'));
    await app.tours.remove('demo-tour');
    await pause();
    expect(app.comparison.current?.tour.label).toBe('New tour');
  });

  it('has nothing to compare once the last scenario went', async () => {
    for (const { id } of app.scenarios.rows.all) await app.scenarios.remove(id);
    await pause();
    expect([app.subject, app.comparison.current, app.comparison.updating]).toEqual([null, null, false]);
  });

  it('names the scenarios compared only when some are not', async () => {
    expect(app.subject?.scenarioIds).toBeNull();
    for (let i = 0; i < 4; i += 1) await app.scenarios.add(startingScenario());
    expect(app.subject?.scenarioIds).toHaveLength(6);
  });

  it('ranks under new weights at once and stores them later', async () => {
    const { preferences } = app.settings.current!;
    const outcome = await app.weigh({ ...preferences, margin: { ...preferences.margin, weight: 0 } });
    expect(outcome.ok).toBe(true);
    expect([workbench.count('comparison.rank'), workbench.count('settings.save')]).toEqual([1, 0]);
    await pause();
    expect([workbench.count('settings.save'), runs()]).toEqual([1, 1]);
  });

  it('stores no weights that were refused', async () => {
    const { preferences } = app.settings.current!;
    await app.weigh({ ...preferences, cost: { ...preferences.cost, unacceptable: -5 } });
    await pause();
    expect(workbench.count('settings.save')).toBe(0);
    expect(app.settings.current?.preferences).toEqual(preferences);
  });
});
