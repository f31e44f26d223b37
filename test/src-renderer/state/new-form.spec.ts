import { describe, expect, it } from 'vitest';
import { success } from '../../../shared-types/outcome.ts';
import { Form } from '../../../src-renderer/state/form.svelte.ts';
import { NewForm } from '../../../src-renderer/state/new-form.svelte.ts';

const begin = () =>
  new Form({ label: '' }, { root: 'item', live: false, store: () => Promise.resolve(success(null)) });

describe('NewForm', () => {
  it('keeps what was filled in until it is added or given up', () => {
    const kept = new NewForm<{ label: string }>();
    const form = kept.of(begin);
    form.set('label', 'Camera');
    expect([kept.of(begin), kept.unsaved]).toEqual([form, true]);
    kept.done();
    expect(kept.unsaved).toBe(false);
    expect(kept.of(begin).at('label')).toBe('');
  });

  it('begins anew where nothing was filled in', () => {
    const kept = new NewForm<{ label: string }>();
    const form = kept.of(begin);
    expect(kept.of(begin)).not.toBe(form);
  });
});
