import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Invoke } from '../../../shared-types/contract.ts';
import { failure } from '../../../shared-types/outcome.ts';
import { usualItem } from '../../../shared-types/usual-item.ts';
import { keepTypedText, typedTexts } from '../../../src-renderer/parts/fields/typed-text.ts';
import { AppState } from '../../../src-renderer/state/app-state.svelte.ts';
import { screens } from '../../../src-renderer/state/route.svelte.ts';
import { newReading } from '../../../src-renderer/views/field-log/new-reading.ts';
import { startingTour } from '../../../src-renderer/views/tours/new-tour.ts';
import { FakePage, FakeShelf } from '../support/fake-page.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('what is not stored when the page goes', () => {
  let workbench: FakeWorkbench;
  let shelf: FakeShelf;
  let app: AppState;
  beforeEach(async () => {
    vi.useFakeTimers();
    workbench = new FakeWorkbench();
    shelf = new FakeShelf();
    app = await opened();
  });
  afterEach(() => vi.useRealTimers());

  async function opened(): Promise<AppState> {
    const page = new AppState(workbench.invoke, new FakePage(shelf));
    await page.start();
    return page;
  }

  /** The page goes without a word, as one that crashed, and is loaded anew. */
  async function loadedAnew(): Promise<AppState> {
    app.keepDrafts();
    app = await opened();
    return app;
  }

  const phoneForm = () => app.inventory.forms.of(app.inventory.rows.find('demo-phone')!);
  const texts = (): readonly string[] => app.notices.shown.map(({ text }) => text);
  const saves = (): number => workbench.calls.filter(({ name }) => name.endsWith('.save')).length;

  async function refusePhone(): Promise<void> {
    phoneForm().set('massG', -5);
    await phoneForm().settled();
  }

  it('drops with a notice what was changed of a row that is gone', async () => {
    await refusePhone();
    app.keepDrafts();
    workbench.catalogue.items = workbench.catalogue.items.filter(({ id }) => id !== 'demo-phone');
    app = await opened();
    expect(texts()).toEqual([expect.stringMatching(/^An entry that was not stored could not be put back/)]);
    app.keepDrafts();
    expect(shelf.held.size).toBe(0);
  });

  it('drops what no longer fits its form', async () => {
    await refusePhone();
    app.keepDrafts();
    for (const [name, text] of shelf.held)
      shelf.held.set(name, text.replaceAll('"massG":', '"weightOfOldVersions":'));
    app = await opened();
    expect(app.unsaved).toBe(false);
    expect(texts()).toEqual([expect.stringMatching(/^An entry that was not stored could not be put back/)]);
  });

  it('drops nothing while the lists can’t be read', async () => {
    await refusePhone();
    app.keepDrafts();
    const locked = failure('storage', 'The catalogue is locked.');
    const invoke: Invoke = (name, input) =>
      name === 'items.list' ? Promise.resolve(locked) : workbench.invoke(name, input);
    const failing = new AppState(invoke, new FakePage(shelf));
    await failing.start();
    failing.keepDrafts();
    app = await opened();
    expect(phoneForm().at('massG')).toBe(-5);
  });

  it('is back with its error, marked as not stored, and stored by nobody', async () => {
    await refusePhone();
    const before = saves();
    await loadedAnew();
    expect([app.isUnsaved('inventory'), saves()]).toEqual([true, before]);
    expect(texts()).toEqual(['What was not stored yet is back, in Inventory.']);
    expect([phoneForm().at('massG'), phoneForm().status]).toEqual([-5, 'refused']);
    expect(phoneForm().errorAt('massG')).toMatch(/a number from 0/);
  });

  it('is stored once the rider puts it right, and not kept after that', async () => {
    await refusePhone();
    await loadedAnew();
    phoneForm().set('massG', 150);
    await phoneForm().settled();
    expect(workbench.catalogue.items.find(({ id }) => id === 'demo-phone')?.massG).toBe(150);
    await loadedAnew();
    expect([app.unsaved, shelf.held.size]).toEqual([false, 0]);
  });

  it('keeps what was typed word for word beside a number that is none', async () => {
    keepTypedText(phoneForm(), 'massG', { text: 'two bars', value: Number.NaN });
    phoneForm().set('massG', Number.NaN);
    await phoneForm().settled();
    await loadedAnew();
    expect(phoneForm().at('massG')).toBeNaN();
    expect(typedTexts(phoneForm()).get('massG')).toEqual({ text: 'two bars', value: Number.NaN });
  });

  it('leaves beside it what was stored of the same row elsewhere', async () => {
    await refusePhone();
    app.keepDrafts();
    workbench.catalogue.items = workbench.catalogue.items.map((item) =>
      item.id === 'demo-phone' ? { ...item, label: 'Named anew' } : item,
    );
    app = await opened();
    expect([phoneForm().at('label'), phoneForm().at('massG')]).toEqual(['Named anew', -5]);
  });

  it('is forgotten where it was stored after all', async () => {
    await refusePhone();
    app.keepDrafts();
    workbench.catalogue.items = workbench.catalogue.items.map((item) =>
      item.id === 'demo-phone' ? { ...item, massG: -5 } : item,
    );
    app = await opened();
    expect([app.unsaved, texts()]).toEqual([false, []]);
  });

  it('is back in forms of every kind', async () => {
    const { currency } = app;
    app.inventory.newItem.of(usualItem('bank', currency)).set('label', 'A bank to be');
    app.tours.forms.of(app.tour!).place('label', '');
    app.scenarios.forms.of(app.scenarios.rows.find('demo-hub')!).place('label', '');
    app.settings.form!.place('currency', '?');
    app.knobs!.place('grams.weight', -1);
    const own = { items: [], tour: startingTour('2027-05-03'), putDemoAway: true };
    app.ownStart.form(() => own).place('tour.label', 'My way');
    app.ownStart.goTo(2, []);
    const phone = app.inventory.rows.find('demo-phone')!;
    app.fieldLog.newReading.of(newReading(phone, 'charge', '2027-05-03')).place('note', 'in the rain');
    await loadedAnew();
    expect(screens.filter((screen) => app.isUnsaved(screen))).toEqual([
      ...['start', 'trade-offs', 'inventory', 'field-log', 'tours', 'scenarios', 'about'],
    ]);
    expect(app.inventory.newItem.begun?.at('label')).toBe('A bank to be');
    expect([app.ownStart.step, app.ownStart.begun?.at('tour.label')]).toEqual([2, 'My way']);
    expect(app.fieldLog.newReading.begun?.at('note')).toBe('in the rain');
  });

  it('opens the CSV that was being read in again, and reads it', async () => {
    app.inventory.csv.write('one\nbad');
    await loadedAnew();
    await vi.runAllTimersAsync();
    const { opened: isOpen, text, reading } = app.inventory.csv;
    expect([isOpen, text, reading?.lines.length, app.isUnsaved('inventory')]).toEqual([
      ...[true, 'one\nbad', 1, true],
    ]);
  });

  it('opens the form of a changed reading again', async () => {
    const phone = app.inventory.rows.find('demo-phone')!;
    await app.fieldLog.add({
      ...{ itemId: phone.id, on: '2027-05-03', note: '', as: 'charge' },
      state: { as: 'share', share: 0.5 },
    });
    const reading = app.fieldLog.readings[0]!;
    app.fieldLog.forms.of(reading).place('note', 'was cold');
    await loadedAnew();
    expect(app.fieldLog.edited?.id).toBe(reading.id);
    expect(app.fieldLog.forms.of(app.fieldLog.edited!).at('note')).toBe('was cold');
  });

  it('waits in its own catalogue while another is in use', async () => {
    await refusePhone();
    app.keepDrafts();
    await app.place.startEmpty();
    app.keepDrafts();
    app = await opened();
    expect(app.unsaved).toBe(false);
    workbench.place.state = { ...workbench.place.state, file: '/data/catalogue.sqlite3' };
    app = await opened();
    expect(phoneForm().at('massG')).toBe(-5);
  });
});
