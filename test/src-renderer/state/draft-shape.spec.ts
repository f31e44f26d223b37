import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { itemDraft, itemKinds, type ItemKind } from '../../../shared-types/item.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';
import { isBuiltAs } from '../../../src-renderer/state/draft-shape.ts';
import { randomItem } from '../../src-main/catalogue/random-drafts.ts';

const phone = draftOf(demoItems.find(({ id }) => id === 'demo-phone')!);
const without = (name: string): object =>
  Object.fromEntries(Object.entries(phone).filter(([key]) => key !== name));
const anyItem = fc.constantFrom(...(Object.keys(itemKinds) as ItemKind[])).chain(randomItem);

describe('isBuiltAs()', () => {
  it.each([
    ['nothing at all', undefined],
    ['no group', 'a phone'],
    ['a field too many', { ...phone, colour: 'grey' }],
    ['a field too few', without('massG')],
    ['a kind that is gone', { ...phone, kind: 'lamp' }],
    ['a choice that is gone', { ...phone, state: 'lent' }],
    ['a text in place of a number', { ...phone, massG: '190' }],
    ['a number in place of a text', { ...phone, label: 7 }],
    ['a value in place of a group', { ...phone, price: 3 }],
  ])('refuses %s', (_, draft) => {
    expect(isBuiltAs(itemDraft, draft)).toBe(false);
  });

  it.each([
    ['a number out of its range', { ...phone, massG: -5 }],
    ['a number that is none', { ...phone, massG: Number.NaN }],
    ['a number left empty', { ...phone, massG: null }],
    ['a label that is too long', { ...phone, label: 'x'.repeat(500) }],
  ])('takes %s, for its field can say what is allowed', (_, draft) => {
    expect(itemDraft.safeParse(draft).success).toBe(false);
    expect(isBuiltAs(itemDraft, draft)).toBe(true);
  });

  it('takes whatever the schema allows', () => {
    fc.assert(
      fc.property(anyItem, (item) => isBuiltAs(itemDraft, item)),
      { numRuns: 60 },
    );
  });

  it('refuses any item of which a field is missing', () => {
    const lacking = anyItem.chain((item) =>
      fc
        .constantFrom(...Object.keys(item))
        .map((name) => Object.fromEntries(Object.entries(item).filter(([key]) => key !== name))),
    );
    fc.assert(
      fc.property(lacking, (item) => !isBuiltAs(itemDraft, item)),
      { numRuns: 60 },
    );
  });
});
