import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../db/demo/demo.ts';
import { success } from '../../../shared-types/outcome.ts';
import type { OwnStart } from '../../../shared-types/own-start.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';
import { OwnStartState } from '../../../src-renderer/state/own-start.svelte.ts';

const begin = (): OwnStart => ({ items: [], tour: draftOf(demoTours[0]!), putDemoAway: true });
const fault = { path: 'own.items', allowed: 'at least one device', got: '[]' };

describe('OwnStartState', () => {
  it('keeps the draft while the rider looks elsewhere, until the way has been gone', () => {
    const state = new OwnStartState(() => Promise.resolve(success(null)));
    const form = state.form(begin);
    expect(state.form(begin)).toBe(form);
    state.goTo(2, []);
    state.done();
    expect([state.step, state.form(begin) === form]).toEqual([0, false]);
  });

  it('stays on a step that is not right yet, with what is allowed beside its field', () => {
    const state = new OwnStartState(() => Promise.resolve(success(null)));
    const form = state.form(begin);
    expect(state.goTo(1, [fault])).toBe(false);
    expect([state.step, form.errorAt('items')]).toEqual([0, 'at least one device']);
    expect(state.goTo(1, [])).toBe(true);
    expect([state.step, form.errorAt('items')]).toEqual([1, null]);
  });
});
