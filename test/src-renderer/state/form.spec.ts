import { describe, expect, it } from 'vitest';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { Form, withValueAt } from '../../../src-renderer/state/form.svelte.ts';

const refusal = failure('bad-input', 'item.massG: allowed is a number.', [
  { path: 'item.massG', allowed: 'a number from 0 to 20,000 g', got: '-5' },
]);

/** A form over a store whose answers the test gives, in the order it likes. */
function formWith(live: boolean) {
  const stored: unknown[] = [];
  const answers: ((outcome: Outcome<unknown>) => void)[] = [];
  const form = new Form(
    { label: 'Phone', massG: 190, input: { powerW: 18 }, outputs: [{ powerW: 5 }, { powerW: 7 }] },
    {
      root: 'item',
      live,
      store: (draft) => {
        stored.push(draft);
        return new Promise((resolve) => answers.push(resolve));
      },
    },
  );
  return { form, stored, answers };
}

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('Form', () => {
  it('keeps a refused value and says what is allowed beside it', async () => {
    const { form, answers } = formWith(true);
    form.set('massG', -5);
    answers[0]!(refusal);
    await settle();
    expect(form.at('massG')).toBe(-5);
    expect(form.errorAt('massG')).toBe('a number from 0 to 20,000 g');
    expect(form.errorAt('label')).toBeNull();
    expect(form.status).toBe('refused');
  });

  it('ignores a late refusal of a value that was corrected since', async () => {
    const { form, answers } = formWith(true);
    form.set('massG', -5);
    form.set('massG', 5);
    answers[1]!(success(null));
    await settle();
    answers[0]!(refusal);
    await settle();
    expect(form.errorAt('massG')).toBeNull();
    expect(form.status).toBe('stored');
  });

  it('takes the messages away once the value is good', async () => {
    const { form, answers } = formWith(true);
    form.set('massG', -5);
    answers[0]!(refusal);
    await settle();
    form.set('massG', 200);
    answers[1]!(success(null));
    await settle();
    expect(form.errors).toEqual([]);
  });

  it('stores nothing by itself unless it is live', async () => {
    const { form, stored, answers } = formWith(false);
    form.set('label', 'Camera');
    expect(stored).toEqual([]);
    const submitted = form.submit();
    answers[0]!(success(null));
    expect(await submitted).toBe(true);
    expect(stored).toMatchObject([{ label: 'Camera' }]);
  });

  it('says which parts are not stored, and which were left as they are', async () => {
    const { form, answers } = formWith(true);
    form.set('massG', -5);
    form.set('input', { powerW: 30 });
    answers[1]!(refusal);
    await settle();
    expect(['massG', 'input', 'label', 'outputs.0'].map((path) => form.isStored(path))).toEqual([
      false,
      false,
      true,
      true,
    ]);
    form.set('massG', 5);
    answers[2]!(success(null));
    await settle();
    expect([form.isStored('massG'), form.isStored('input')]).toEqual([true, true]);
  });

  it('holds something unsaved while a value is refused, on its way or half entered', async () => {
    const { form, answers } = formWith(true);
    expect(form.unsaved).toBe(false);
    form.set('massG', 5);
    expect(form.unsaved).toBe(true);
    answers[0]!(success(null));
    await settle();
    expect(form.unsaved).toBe(false);
    form.place('massG', Number.NaN);
    expect(form.unsaved).toBe(true);
  });

  it('adopts what was stored elsewhere, and keeps what is refused', async () => {
    const { form, answers } = formWith(true);
    form.set('massG', -5);
    answers[0]!(refusal);
    await settle();
    const stored = { label: 'Telephone', massG: 190, input: { powerW: 18 }, outputs: [] };
    form.adopt(stored);
    expect([form.at('label'), form.at('massG'), form.status]).toEqual(['Telephone', -5, 'refused']);
    expect(form.errorAt('massG')).not.toBeNull();
  });

  it('takes a refusal away with the value it was for', async () => {
    const { form, answers } = formWith(true);
    form.set('massG', -5);
    answers[0]!(refusal);
    await settle();
    form.adopt({ label: 'Phone', massG: -5, input: { powerW: 18 }, outputs: [{ powerW: 5 }, { powerW: 7 }] });
    expect([form.unsaved, form.errors, form.status]).toEqual([false, [], 'untouched']);
  });

  it('puts back what was refused, with what is allowed, and stores nothing by itself', async () => {
    const { form, answers } = formWith(true);
    form.set('massG', -5);
    answers[0]!(refusal);
    await settle();
    const { form: anew, stored } = formWith(true);
    anew.putBack(form.unstored!);
    expect([anew.at('massG'), anew.status, anew.errorAt('massG')]).toEqual([
      ...[-5, 'refused', 'a number from 0 to 20,000 g'],
    ]);
    expect([anew.unsaved, stored]).toEqual([true, []]);
  });

  it('is not refused for what was merely begun, and lost none of it', () => {
    const { form } = formWith(false);
    form.set('label', 'Telephone');
    const { form: anew } = formWith(false);
    anew.putBack(form.unstored!);
    expect([anew.at('label'), anew.status, anew.unsaved]).toEqual(['Telephone', 'untouched', true]);
  });

  it('has nothing unstored once what was put back is what is stored', () => {
    const { form } = formWith(true);
    form.place('label', 'Telephone');
    const { unstored } = form;
    form.adopt(unstored!.draft);
    form.putBack(unstored!);
    expect([form.unstored, form.status, form.errors]).toEqual([null, 'untouched', []]);
  });

  it('tells how the last change fares once that is known', async () => {
    const { form, answers } = formWith(true);
    expect(await form.settled()).toBe('untouched');
    form.set('massG', -5);
    const settled = form.settled();
    answers[0]!(refusal);
    expect(await settled).toBe('refused');
  });

  it('places half an entry without storing it', () => {
    const { form, stored } = formWith(true);
    form.place('massG', Number.NaN);
    expect(form.at('massG')).toBeNaN();
    expect(stored).toEqual([]);
  });

  it('reaches into groups and lists by path', () => {
    const { form, stored } = formWith(true);
    form.set('outputs.1.powerW', 15);
    expect(form.at('outputs')).toEqual([{ powerW: 5 }, { powerW: 15 }]);
    expect(form.at('outputs.7.powerW')).toBeUndefined();
    expect(stored).toMatchObject([{ label: 'Phone', outputs: [{ powerW: 5 }, { powerW: 15 }] }]);
  });
});

describe('withValueAt()', () => {
  it('never changes the value it copies from', () => {
    const before = { a: { b: [1, 2] }, c: {} };
    const after = withValueAt(before, ['a', 'b', '0'], 9);
    expect(before).toEqual({ a: { b: [1, 2] }, c: {} });
    expect(after).toEqual({ a: { b: [9, 2] }, c: {} });
    expect((after as typeof before).c).toBe(before.c);
  });
});
