import { beforeEach, describe, expect, it } from 'vitest';
import type { FormStatus } from '../../../src-renderer/state/form.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { tellUnstored } from '../../../src-renderer/state/unstored-news.ts';

const phone = { id: 'phone', label: 'Phone' };
const why = (): string => '‘Mass of one’ is refused';
const left = (status: FormStatus) => ({ settled: () => Promise.resolve(status) });

describe('tellUnstored()', () => {
  let notices: NoticesState;
  beforeEach(() => {
    notices = new NoticesState();
  });

  it.each(['untouched', 'storing', 'stored'] as const)(
    'says nothing of a form that is %s',
    async (status) => {
      await tellUnstored(notices, left(status), 'items', () => phone, why);
      expect(notices.shown).toEqual([]);
    },
  );

  it('says nothing of a row that is gone', async () => {
    await tellUnstored(notices, left('refused'), 'items', () => undefined, why);
    expect(notices.shown).toEqual([]);
  });

  it('says what is refused, with a way back', async () => {
    await tellUnstored(notices, left('refused'), 'items', () => phone, why);
    expect(notices.shown).toMatchObject([
      {
        text: 'Changes of Phone are not stored yet: ‘Mass of one’ is refused.',
        link: { words: 'See Phone', address: '#/inventory/phone' },
      },
    ]);
  });
});
