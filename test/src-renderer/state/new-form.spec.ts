import { describe, expect, it } from 'vitest';
import { success } from '../../../shared-types/outcome.ts';
import { Form } from '../../../src-renderer/state/form.svelte.ts';
import { NewForm } from '../../../src-renderer/state/new-form.svelte.ts';

const begun = () =>
  new NewForm<{ label: string }>(
    (draft) => new Form(draft, { root: 'item', live: false, store: () => Promise.resolve(success(null)) }),
  );
const empty = { label: '' };

describe('NewForm', () => {
  it('keeps what was filled in until it is added or given up', () => {
    const kept = begun();
    const form = kept.of(empty);
    form.set('label', 'Camera');
    expect([kept.of(empty), kept.unsaved]).toEqual([form, true]);
    kept.done();
    expect([kept.unsaved, kept.begun]).toEqual([false, null]);
    expect(kept.of(empty).at('label')).toBe('');
  });

  it('begins anew where nothing was filled in', () => {
    const kept = begun();
    const form = kept.of(empty);
    expect(kept.of({ label: 'Usual' })).not.toBe(form);
    expect(kept.begun?.at('label')).toBe('Usual');
  });
});
