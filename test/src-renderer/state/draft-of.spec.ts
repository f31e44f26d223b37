import { describe, expect, it } from 'vitest';
import { itemDraft } from '../../../shared-types/item.ts';
import { tourDraft } from '../../../shared-types/tour.ts';
import { demoItems, demoTours } from '../../../db/demo/demo.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';

describe('draftOf()', () => {
  it('leaves the row itself untouched', () => {
    const row = { id: 'a', label: 'A' };
    draftOf(row);
    expect(row).toEqual({ id: 'a', label: 'A' });
  });

  it.each(demoItems.map((item) => [item.label, item] as const))(
    'makes %s a draft the contract takes',
    (_, item) => {
      expect(itemDraft.safeParse(draftOf(item)).success).toBe(true);
    },
  );

  it('makes a tour a draft the contract takes', () => {
    expect(tourDraft.safeParse(draftOf(demoTours[0]!)).success).toBe(true);
  });
});
