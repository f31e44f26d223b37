import { describe, expect, it } from 'vitest';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { DiagnosticsState } from '../../../src-renderer/state/diagnostics.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

function begun(mayCopy: boolean) {
  const copies: string[] = [];
  const copy = (text: string): Promise<boolean> => {
    copies.push(text);
    return Promise.resolve(mayCopy);
  };
  const calls = new Calls(new FakeWorkbench().invoke, new NoticesState());
  return { state: new DiagnosticsState(calls, copy), copies };
}

describe('DiagnosticsState', () => {
  it('says so where the page may not copy, until the facts are read anew', async () => {
    const { state } = begun(false);
    await state.load();
    await state.copy();
    expect(state.copied).toBe('refused');
    await state.load();
    expect(state.copied).toBe('no');
  });

  it('copies the facts as text', async () => {
    const { state, copies } = begun(true);
    await state.load();
    await state.copy();
    expect([state.copied, copies]).toEqual(['yes', [state.text]]);
    expect(state.text).toContain('Chargewright 0.1.0');
  });
});
