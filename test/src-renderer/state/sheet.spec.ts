import { beforeEach, describe, expect, it } from 'vitest';
import type { CallInput, Delivery, Invoke } from '../../../shared-types/contract.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { SheetState } from '../../../src-renderer/state/sheet.svelte.ts';

const subject = { tourId: 'demo-tour', scenarioIds: null };

describe('the sheet on its way to a file', () => {
  let notices: NoticesState;
  let asked: { readonly name: string; readonly input: unknown }[];
  beforeEach(() => {
    notices = new NoticesState();
    asked = [];
  });

  function stateThat(answers: () => Promise<Outcome<Delivery>>, of: typeof subject | null = subject) {
    const invoke = ((name: string, input: unknown) => {
      asked.push({ name, input });
      return name === 'sheet.save' ? answers() : Promise.resolve(success({ share: null, cancelled: true }));
    }) as unknown as Invoke;
    return new SheetState(new Calls(invoke, notices), () => of);
  }

  function saves(): readonly CallInput<'sheet.save'>[] {
    return asked
      .filter(({ name }) => name === 'sheet.save')
      .map(({ input }) => input as CallInput<'sheet.save'>);
  }

  async function told(outcome: Outcome<Delivery>): Promise<string[]> {
    await stateThat(() => Promise.resolve(outcome)).save({ as: 'pdf', paper: 'letter' });
    return notices.shown.map(({ text }) => text);
  }

  it('shows why a sheet could not be written', async () => {
    expect(await told(failure('storage', 'The disk is full.'))).toEqual(['The disk is full.']);
  });

  it('asks for nothing without a tour to compare', async () => {
    await stateThat(() => Promise.resolve(success({ as: 'cancelled' })), null).save({ as: 'json' });
    expect(asked).toEqual([]);
  });

  it('says nothing when the dialog was closed', async () => {
    expect(await told(success({ as: 'cancelled' }))).toEqual([]);
  });

  it('says where the sheet was saved', async () => {
    expect(await told(success({ as: 'saved', path: 'Documents/sheet.pdf' }))).toEqual([
      'Saved as Documents/sheet.pdf.',
    ]);
  });

  it('asks for the form and for what would change the answer as chosen', async () => {
    const sheet = stateThat(() => Promise.resolve(success({ as: 'cancelled' })));
    sheet.withSwings = false;
    await sheet.save({ as: 'csv', table: 'legs' });
    expect(saves()).toMatchObject([{ ...subject, withSwings: false, form: { as: 'csv', table: 'legs' } }]);
  });

  it('stops the run at the rider’s wish, and tells nothing of what it still answers', async () => {
    let answer: (outcome: Outcome<Delivery>) => void = () => undefined;
    const sheet = stateThat(() => new Promise((resolve) => (answer = resolve)));
    const saving = sheet.save({ as: 'pdf', paper: 'a4' });
    expect(sheet.running).toBe(true);
    sheet.cancel();
    answer(success({ as: 'saved', path: 'too-late.pdf' }));
    await saving;
    expect(sheet.running).toBe(false);
    expect(sheet.cancelled).toBe(true);
    expect(asked).toContainEqual({ name: 'runs.cancel', input: { runId: saves()[0]?.runId } });
    expect(notices.shown).toEqual([]);
  });
});
