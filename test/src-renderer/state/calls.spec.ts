import { beforeEach, describe, expect, it } from 'vitest';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

describe('Calls', () => {
  let notices: NoticesState;
  let calls: Calls;
  beforeEach(() => {
    notices = new NoticesState();
    calls = new Calls(new FakeWorkbench().invoke, notices);
  });

  it('shows the message of a call that failed', async () => {
    const outcome = await calls.ask('tours.remove', { id: 'nothing' });
    expect(outcome.ok).toBe(false);
    expect(notices.shown).toMatchObject([{ tone: 'failure', text: 'Nothing has the id nothing.' }]);
  });

  it('leads to backups and other catalogues where the catalogue can’t be read or written', async () => {
    const workbench = new FakeWorkbench();
    workbench.place.refusal = 'The disk is full.';
    await new Calls(workbench.invoke, notices).ask('catalogue.backUp', {});
    await calls.ask('tours.remove', { id: 'nothing' });
    expect(notices.shown.map(({ link }) => link?.address)).toEqual(['#/about', undefined]);
  });

  it('leaves fields in error to the form that submitted them', async () => {
    const scenario = draftOf(new FakeWorkbench().catalogue.scenarios[0]!);
    const outcome = await calls.submit('scenarios.save', { scenario: { ...scenario, label: '' } });
    expect(outcome.ok ? [] : outcome.error.fields).toMatchObject([{ path: 'scenario.label' }]);
    expect(notices.shown).toEqual([]);
  });

  it('shows a failure of a submitted form that names no field', async () => {
    await calls.submit('comparison.rank', {
      tourId: 'nothing',
      preferences: new FakeWorkbench().catalogue.settings.preferences,
    });
    expect(notices.shown).toMatchObject([{ text: 'There is no such tour.' }]);
  });

  it('leaves a failure to a caller who only attempts', async () => {
    const outcome = await calls.attempt('tours.remove', { id: 'nothing' });
    expect([outcome.ok, notices.shown]).toEqual([false, []]);
  });

  it('says nothing of a call that went well', async () => {
    expect((await calls.ask('items.list', {})).ok).toBe(true);
    expect(notices.shown).toEqual([]);
  });
});
