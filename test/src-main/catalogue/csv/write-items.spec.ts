import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import { itemKinds, type ItemDraft, type ItemKind } from '../../../../shared-types/item.ts';
import { exampleItems } from '../../../../src-main/catalogue/csv/example-items.ts';
import { writeItemCsv } from '../../../../src-main/catalogue/csv/write-items.ts';
import { readItemCsv } from '../../../../src-main/catalogue/item-csv.ts';
import { randomItem } from '../random-drafts.ts';

const euro = 'EUR';
const kinds = Object.keys(itemKinds) as ItemKind[];

function readBack(items: readonly ItemDraft[]): ItemDraft[] {
  const { lines, problems } = readItemCsv(writeItemCsv(items, euro), euro);
  expect(problems).toEqual([]);
  return lines.map(({ item }) => item);
}

describe('writeItemCsv()', () => {
  it.each(kinds)('writes any item of the kind %s so that it reads back the same', (kind) => {
    // A cell is trimmed and holds no control characters; what notes look like beyond that is told below.
    const item = randomItem(kind).map((draft) => ({ ...draft, notes: 'as noted' }));
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 3 }), (items) => {
        expect(readBack(items)).toEqual(items);
      }),
    );
  });

  it('writes every form of the examples', () => {
    expect(readBack(exampleItems(euro))).toEqual(exampleItems(euro));
  });

  it('keeps text from running as a formula, and reads it back as it was', () => {
    const [phone] = demoItems;
    const { id: _, ...draft } = { ...phone!, label: '=1+1', notes: 'first "line"\n-second' };
    expect(writeItemCsv([draft], euro)).toContain("'=1+1");
    expect(readBack([draft])).toEqual([draft]);
  });

  it('leaves out the columns that no item fills', () => {
    const [header] = writeItemCsv(exampleItems(euro).slice(-1), euro).split('\r\n');
    expect(header).toBe('\ufeffkind,label,state,quantity,mass_g,price,mount,notes,for_hub');
  });
});
