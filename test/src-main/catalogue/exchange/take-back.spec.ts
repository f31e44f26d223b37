import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings, demoTours } from '../../../../db/demo/demo.ts';
import { inMemory, type WriteDb } from '../../../../src-main/catalogue/connection.ts';
import { readContent } from '../../../../src-main/catalogue/exchange/content.ts';
import { formerState, storeEntries } from '../../../../src-main/catalogue/exchange/store-entries.ts';
import { takeBack } from '../../../../src-main/catalogue/exchange/take-back.ts';
import { removeItems } from '../../../../src-main/catalogue/item-removal.ts';
import { openCatalogue } from '../../../../src-main/catalogue/open.ts';
import { saveReading } from '../../../../src-main/catalogue/readings.ts';
import { saveScenario } from '../../../../src-main/catalogue/scenarios.ts';
import { randomCatalogue } from '../../../support/random-catalogue.ts';
import { openedDemo } from '../temporary-catalogue.ts';
import { someEstimate, someReadings } from '../some-readings.ts';
import { fileOf, head, judged, lay, savedText } from './stored-file.ts';

const [phone] = demoItems;
const bank = demoItems.find(({ id }) => id === 'demo-bank-20')!;
const [banks] = demoScenarios;
const [tour] = demoTours;
const mine = { ...bank, id: 'mine', label: 'My bank' };

/** Something new and something changed in every list. */
const aFile = fileOf({
  items: [mine, { ...phone, massG: 999 }],
  tours: [
    { ...tour, id: 'away', leftAtHome: ['mine'] },
    { ...tour, notes: 'changed' },
  ],
  scenarios: [{ ...banks, label: 'With mine', kit: [{ itemId: 'mine', quantity: 1 }] }],
  readings: [{ ...someReadings[0], id: 'noted', itemId: 'mine' }],
  estimates: [someEstimate, { ...someEstimate, itemId: 'mine' }],
  settings: { ...demoSettings, theme: 'dark', tourId: 'away' },
});

function taken(write: WriteDb, text = aFile) {
  const file = judged(write, text);
  const former = formerState(file, head);
  storeEntries(write, file);
  return former;
}

describe('takeBack()', () => {
  it('is refused as a whole where something came to refer to what would go', () => {
    const { write } = openedDemo();
    const former = taken(write);
    const { id: _, ...draft } = banks!;
    saveScenario(write, { ...draft, label: 'Later', kit: [{ itemId: 'mine', quantity: 1 }] });
    const before = write.serialize();
    expect(takeBack(write, former)).toMatchObject({
      ok: false,
      error: {
        code: 'in-use',
        message: 'My bank is carried by the scenario Later: take it out there first.',
      },
    });
    expect(write.serialize().equals(before)).toBe(true);
  });

  it('is refused as a whole where a reading was noted since, or what was carried is gone', () => {
    const { write } = openedDemo();
    const former = taken(write);
    const { ...reading } = someReadings[0]!;
    saveReading(write, { ...reading, itemId: 'mine' }, 'later');
    expect(takeBack(write, former)).toMatchObject({ ok: false, error: { code: 'in-use' } });

    const other = openedDemo();
    const gone = taken(other.write, fileOf({ scenarios: [{ ...banks, kit: [] }] }));
    const [line] = banks!.kit;
    for (const { id, ...draft } of demoScenarios) saveScenario(other.write, { ...draft, kit: [] }, id);
    removeItems(other.write, [line!.itemId]);
    const before = savedText(other.read);
    expect(takeBack(other.write, gone)).toMatchObject({
      error: {
        message: expect.stringContaining(`${banks!.label} can’t be put back: kit.0.itemId`) as string,
      },
    });
    expect(savedText(other.read)).toBe(before);
  });

  it('puts all back as it was and removes what was added', () => {
    const { read, write } = openedDemo();
    const before = savedText(read);
    const former = taken(write);
    expect(savedText(read)).not.toBe(before);
    expect(takeBack(write, former)).toEqual({ ok: true, value: { putBack: 4 } });
    expect(savedText(read)).toBe(before);
  });

  it('lets be what the rider has removed meanwhile', () => {
    const { read, write } = openedDemo();
    const before = savedText(read);
    const former = taken(write, fileOf({ items: [mine] }));
    removeItems(write, ['mine']);
    expect(takeBack(write, former)).toMatchObject({ ok: true });
    expect(savedText(read)).toBe(before);
  });

  it('takes back the taking of any catalogue over any other', () => {
    fc.assert(
      fc.property(randomCatalogue, randomCatalogue, (here, there) => {
        const [first, second] = [openCatalogue(inMemory), openCatalogue(inMemory)];
        lay(first.write, { ...here, tours: here.tours.slice(1), settings: null, estimates: [] });
        lay(second.write, there);
        const before = readContent(first.read);
        const former = taken(first.write, savedText(second.read));
        expect(takeBack(first.write, former)).toMatchObject({ ok: true });
        expect({ ...readContent(first.read), settings: null }).toEqual(before);
        first.close();
        second.close();
      }),
      { numRuns: 4, endOnFailure: true },
    );
  });
});
