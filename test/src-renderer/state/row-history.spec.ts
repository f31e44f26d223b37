import { beforeEach, describe, expect, it } from 'vitest';
import { AppState } from '../../../src-renderer/state/app-state.svelte.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';
import { FakePage } from '../support/fake-page.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

const phone = 'demo-phone';

describe('the history of stored changes', () => {
  let workbench: FakeWorkbench;
  let app: AppState;
  beforeEach(async () => {
    workbench = new FakeWorkbench();
    app = new AppState(workbench.invoke, new FakePage());
    await app.start();
  });

  const stored = (id: string) => workbench.catalogue.items.find((item) => item.id === id);
  const next = (): string | undefined => app.history.nextUndo?.words;
  const formOf = (id: string) => app.inventory.forms.of(app.inventory.rows.find(id)!);

  it('has no step for a refused draft, nor for one that says the same', async () => {
    const draft = draftOf(app.inventory.rows.find(phone)!);
    await app.inventory.save(phone, { ...draft, massG: -1 });
    await app.inventory.save(phone, draft);
    expect(next()).toBeUndefined();
  });

  it('shows a restored value in the form, and leaves what is refused beside it', async () => {
    const form = formOf(phone);
    form.set('massG', 250);
    await form.settled();
    form.set('quantity', -1);
    expect(await form.settled()).toBe('refused');
    await app.history.undo();
    expect([form.at('massG'), form.at('quantity'), form.status]).toEqual([190, -1, 'refused']);
    expect(stored(phone)).toMatchObject({ massG: 190, quantity: 1 });
  });

  it('takes back a field and keeps the state the item has moved to since', async () => {
    const form = formOf(phone);
    form.set('massG', 250);
    await form.settled();
    const massStep = app.history.nextUndo!;
    await app.inventory.move(phone, 'retired');
    await app.history.undo(massStep);
    expect(stored(phone)).toMatchObject({ massG: 190, state: 'retired' });
  });

  it('takes back an added item, and keeps the step while a scenario carries it', async () => {
    const outcome = await app.inventory.add(draftOf(app.inventory.rows.find(phone)!));
    const id = outcome.ok ? outcome.value.id : '';
    const scenario = app.scenarios.rows.all[0]!;
    workbench.catalogue.scenarios[0] = { ...scenario, kit: [{ itemId: id, quantity: 1 }] };
    await app.history.undo();
    expect([next(), stored(id)?.id]).toEqual(['Added Phone', id]);
    workbench.catalogue.scenarios[0] = scenario;
    await app.history.undo();
    expect(stored(id)).toBeUndefined();
    await app.history.redo();
    expect([stored(id)?.label, app.inventory.rows.find(id)?.label]).toEqual(['Phone', 'Phone']);
  });

  it('takes back states of several items as one step', async () => {
    const ids = app.inventory.rows.all.slice(0, 3).map(({ id }) => id);
    const before = ids.map((id) => stored(id)?.state);
    await app.inventory.moveAll(new Set(ids), 'retired');
    await app.history.undo();
    expect(ids.map((id) => stored(id)?.state)).toEqual(before);
    expect(next()).toBeUndefined();
  });

  it('takes back the items of a file as one step, and adds them again under their ids', async () => {
    const before = app.inventory.rows.all;
    await app.inventory.addCsv({ text: 'Frame bag\nAnvil', leaveOut: [], passOverErrors: false });
    const added = app.inventory.rows.all;
    expect([added.length, next()]).toEqual([before.length + 2, 'Added 2 items from the file']);
    await app.history.undo();
    expect(app.inventory.rows.all).toEqual(before);
    await app.history.redo();
    expect(app.inventory.rows.all).toEqual(added);
  });

  it('takes back a removed tour where it stood, with what was refused in its form', async () => {
    const tour = app.tours.rows.all[0]!;
    const form = app.tours.forms.of(tour);
    form.set('riderMassKg', 1);
    await form.settled();
    expect(app.isUnsaved('tours')).toBe(true);
    await app.tours.remove(tour.id);
    expect(app.isUnsaved('tours')).toBe(false);
    await app.history.undo();
    expect(app.tours.rows.all[0]).toEqual(tour);
    expect([app.tours.forms.of(tour), form.at('riderMassKg')]).toEqual([form, 1]);
    expect(app.isUnsaved('tours')).toBe(true);
  });

  it('makes an added scenario again under its id', async () => {
    const added = await app.scenarios.add(draftOf(app.scenarios.rows.all[0]!));
    await app.history.undo();
    expect(app.scenarios.rows.find(added!.id)).toBeUndefined();
    await app.history.redo();
    expect(app.scenarios.rows.find(added!.id)).toEqual(added);
  });

  it('takes back the ready-made scenarios as one step', async () => {
    const before = app.scenarios.rows.all.length;
    await app.addReadyMade();
    expect(app.scenarios.rows.all.length).toBeGreaterThan(before);
    await app.history.undo();
    expect(app.scenarios.rows.all).toHaveLength(before);
  });

  it('forgets its steps once all was laid anew', async () => {
    await app.inventory.move(phone, 'retired');
    await app.bringDemoBack();
    expect(next()).toBeUndefined();
  });

  it('takes back a setting and shows it in its form', async () => {
    const form = app.settings.form!;
    form.set('currency', 'JPY');
    await form.settled();
    await app.settings.save({ theme: 'dark' });
    expect(form.at('theme')).toBe('dark');
    await app.history.undo();
    await app.history.undo();
    expect([form.at('currency'), form.at('theme')]).toEqual(['EUR', 'system']);
    expect(workbench.catalogue.settings).toMatchObject({ currency: 'EUR', theme: 'system' });
  });

  it('takes back weights once they rest, in the knobs and in the ranking', async () => {
    const knobs = app.knobs!;
    const before = knobs.at('cost.weight');
    knobs.set('cost.weight', 0.15);
    await knobs.settled();
    expect([app.settings.waiting, app.isUnsaved('trade-offs'), next()]).toEqual([true, true, undefined]);
    const ranked = workbench.count('comparison.rank');
    await app.history.undo();
    expect([knobs.at('cost.weight'), workbench.count('comparison.rank')]).toEqual([before, ranked + 1]);
    expect(workbench.catalogue.settings.preferences.cost.weight).toBe(before);
    expect(app.unsaved).toBe(false);
  });
});
