import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import { inMemory } from '../../../../src-main/catalogue/connection.ts';
import { readContent } from '../../../../src-main/catalogue/exchange/content.ts';
import { entriesOf } from '../../../../src-main/catalogue/exchange/judge-file.ts';
import { storeEntries, takenCounts } from '../../../../src-main/catalogue/exchange/store-entries.ts';
import { listReadings } from '../../../../src-main/catalogue/readings.ts';
import { openCatalogue } from '../../../../src-main/catalogue/open.ts';
import { randomCatalogue } from '../../../support/random-catalogue.ts';
import { openedDemo } from '../temporary-catalogue.ts';
import { fileOf, judged, lay, savedText } from './stored-file.ts';

describe('storeEntries()', () => {
  it('stores nothing when one entry can not be stored', () => {
    const { write } = openedDemo();
    const [phone] = demoItems;
    const file = judged(write, fileOf({ items: [{ ...phone, id: 'another', label: 'Another' }] }));
    const before = write.serialize();
    const [item] = file.items;
    const broken = { ...file, items: [item!, { ...item!, row: { ...item!.row!, quantity: -1 } }] };
    expect(() => storeEntries(write, broken)).toThrow('CHECK constraint failed');
    expect(write.serialize().equals(before)).toBe(true);
  });

  it('brings any catalogue into an empty one without a loss, and a second time changes nothing', () => {
    fc.assert(
      fc.property(randomCatalogue, (content) => {
        const [first, second] = [openCatalogue(inMemory), openCatalogue(inMemory)];
        lay(first.write, content);
        const text = savedText(first.read);
        const file = judged(second.read, text);
        expect(entriesOf(file).filter(({ fate }) => fate !== 'new')).toEqual([]);
        storeEntries(second.write, file);
        expect(savedText(second.read)).toBe(text);
        expect(readContent(second.read)).toEqual(readContent(first.read));
        expect(listReadings(second.read)).toEqual(listReadings(first.read));

        const before = second.write.serialize();
        const again = judged(second.read, text);
        expect(new Set(entriesOf(again).map(({ fate }) => fate))).toEqual(new Set(['same']));
        storeEntries(second.write, again);
        expect(second.write.serialize().equals(before)).toBe(true);
        first.close();
        second.close();
      }),
      { numRuns: 10, endOnFailure: true },
    );
  });

  it('takes all that differs of any other catalogue over what is there', () => {
    fc.assert(
      fc.property(randomCatalogue, randomCatalogue, (here, there) => {
        const [first, second] = [openCatalogue(inMemory), openCatalogue(inMemory)];
        lay(first.write, here);
        lay(second.write, there);
        const text = savedText(second.read);
        storeEntries(first.write, judged(first.read, text));
        expect(takenCounts(judged(first.read, text))).toEqual({ added: 0, changed: 0 });
        first.close();
        second.close();
      }),
      { numRuns: 4, endOnFailure: true },
    );
  });
});
