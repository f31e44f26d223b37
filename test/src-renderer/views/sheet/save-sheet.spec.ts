import { beforeEach, describe, expect, it } from 'vitest';
import type { Delivery, Invoke } from '../../../../shared-types/contract.ts';
import { failure, success, type Outcome } from '../../../../shared-types/outcome.ts';
import { Calls } from '../../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../../src-renderer/state/notices.svelte.ts';
import { saveSheet } from '../../../../src-renderer/views/sheet/save-sheet.ts';

describe('saveSheet()', () => {
  let notices: NoticesState;
  beforeEach(() => (notices = new NoticesState()));

  async function told(outcome: Outcome<Delivery>): Promise<string[]> {
    const invoke = (() => Promise.resolve(outcome)) as unknown as Invoke;
    await saveSheet(new Calls(invoke, notices), { tourId: 'demo-tour', scenarioIds: null, format: 'pdf' });
    return notices.shown.map(({ text }) => text);
  }

  it('shows why a sheet could not be written', async () => {
    expect(await told(failure('storage', 'The disk is full.'))).toEqual(['The disk is full.']);
  });

  it('says nothing when the dialog was closed', async () => {
    expect(await told(success({ as: 'cancelled' }))).toEqual([]);
  });

  it('says where the sheet was saved', async () => {
    expect(await told(success({ as: 'saved', path: 'Documents/sheet.pdf' }))).toEqual([
      'Saved as Documents/sheet.pdf.',
    ]);
  });
});
