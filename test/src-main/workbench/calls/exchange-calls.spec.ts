import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoTours } from '../../../../db/demo/demo.ts';
import { todayFrom } from '../../../../shared-types/dates.ts';
import { connectToRead } from '../../../../src-main/catalogue/connection.ts';
import { backupFolder } from '../../../../src-main/catalogue/backup.ts';
import { usualCatalogue } from '../../../../src-main/catalogue/in-use.ts';
import { FileFault } from '../../../../src-main/workbench/file-fault.ts';
import { openedWorkbench, type TestWorkbench } from '../../../support/open-workbench.ts';
import { fileOf, savedText } from '../../catalogue/exchange/stored-file.ts';
import { someReadings } from '../../catalogue/some-readings.ts';

const [phone] = demoItems;
const bank = demoItems.find(({ id }) => id === 'demo-bank-20')!;
const [tour] = demoTours;
const mine = { ...bank, id: 'mine', label: 'My bank' };
const all = { leaveOut: [], passOverRefused: false, settings: false };

/** What is stored, by another connection than the workbench's own. */
function contentIn(folder: string): string {
  const read = connectToRead(join(folder, usualCatalogue));
  try {
    return savedText(read);
  } finally {
    read.close();
  }
}

const backups = ({ folder }: TestWorkbench): number => {
  try {
    return readdirSync(backupFolder(join(folder, usualCatalogue))).length;
  } catch {
    return 0;
  }
};

async function savedFile({ value, saved }: TestWorkbench): Promise<string> {
  await value('exchange.save', {});
  return new TextDecoder().decode(saved.at(-1)!.bytes);
}

describe('a catalogue file on its way in', () => {
  it('stores nothing where one entry is refused, and makes no copy for it', async () => {
    const workbench = openedWorkbench();
    const text = fileOf({ items: [mine, { ...mine, id: 'heavy', massG: -1 }] });
    const taking = await workbench.value('exchange.take', { ...all, text });
    expect(taking).toMatchObject({ added: 0, former: null, refused: [{ label: 'My bank', place: 1 }] });
    expect(await workbench.value('items.list', {})).toHaveLength(demoItems.length);
    expect(backups(workbench)).toBe(0);
  });

  it('stores nothing where no copy can be made first', async () => {
    const { call, value, folder } = openedWorkbench();
    await value('settings.get', {});
    const before = contentIn(folder);
    writeFileSync(backupFolder(join(folder, usualCatalogue)), 'in the way');
    expect(await call('exchange.take', { ...all, text: fileOf({ items: [mine] }) })).toMatchObject({
      error: { code: 'storage' },
    });
    expect(contentIn(folder)).toBe(before);
  });

  it('is refused by its own word where it is none', async () => {
    const { call } = openedWorkbench();
    for (const text of ['', '{', 'kind,label', '[]', fileOf({ formatVersion: 9 })]) {
      expect(await call('exchange.preview', { text })).toMatchObject({
        ok: false,
        error: { code: 'unreadable' },
      });
      expect(await call('exchange.take', { ...all, text })).toMatchObject({ error: { code: 'unreadable' } });
    }
    const huge = ' '.repeat(20_000_001);
    expect(await call('exchange.preview', { text: huge })).toMatchObject({
      error: { code: 'bad-input', message: expect.stringContaining('at most 20 MB') as string },
    });
  });

  it('has its tours and readings judged by the rules of their own screens', async () => {
    const { value } = openedWorkbench();
    const [leg] = tour!.legs;
    const { entries } = await value('exchange.preview', {
      text: fileOf({
        madeOn: '2027-04-18',
        tours: [{ ...tour, id: 'away', legs: [{ ...leg, place: { as: 'station', station: 'Nowhere' } }] }],
        readings: [
          { ...someReadings[2], id: 'of-a-phone', itemId: 'demo-phone', on: '2020-05-03' },
          { ...someReadings[0], id: 'of-a-panel', itemId: 'demo-panel-20', on: '2020-05-03' },
          { ...someReadings[0], id: 'to-come', on: '2199-05-03' },
        ],
      }),
    });
    expect(entries.map(({ fate, reasons: [first] }) => [fate, first?.path])).toEqual([
      ['refused', 'legs.0.place.station'],
      ['refused', 'as'],
      ['refused', 'as'],
      ['refused', 'on'],
    ]);
  });

  it('takes a reading of the day on which the file was made, though it is yesterday here', async () => {
    const { value } = openedWorkbench();
    const tomorrow = todayFrom(new Date(Date.now() + 86_400_000));
    const readings = [{ ...someReadings[0], id: 'noted', on: tomorrow }];
    const fates = async (madeOn?: string) =>
      (await value('exchange.preview', { text: fileOf({ madeOn, readings }) })).entries.map(
        ({ fate }) => fate,
      );
    expect(await fates()).toEqual(['refused']);
    expect(await fates(tomorrow)).toEqual(['new']);
  });

  it('is looked at without being stored', async () => {
    const workbench = openedWorkbench();
    await workbench.value('settings.get', {});
    const before = contentIn(workbench.folder);
    const preview = await workbench.value('exchange.preview', {
      text: fileOf({ madeOn: '2027-04-18', program: '0.1.0', items: [mine] }),
    });
    expect(preview).toMatchObject({ madeOn: '2027-04-18', program: '0.1.0', entries: [{ fate: 'new' }] });
    expect(contentIn(workbench.folder)).toBe(before);
  });

  it('is stored but for what is passed over and left out, after a copy of the catalogue', async () => {
    const workbench = openedWorkbench();
    const text = fileOf({
      items: [mine, { ...phone, massG: 205 }, { ...mine, id: 'heavy', massG: -1 }, { ...mine, id: 'spare' }],
      scenarios: [{ ...demoScenarios[0], id: 'with-spare', kit: [{ itemId: 'spare', quantity: 1 }] }],
    });
    const leaveOut = [{ list: 'items', place: 3 } as const];
    const taking = await workbench.value('exchange.take', { ...all, leaveOut, passOverRefused: true, text });
    expect(taking).toMatchObject({ added: 1, changed: 1, refused: [{ place: 2 }, { list: 'scenarios' }] });
    const items = await workbench.value('items.list', {});
    expect(items.map(({ id }) => id)).toEqual(expect.arrayContaining(['mine']));
    expect(items).toHaveLength(demoItems.length + 1);
    expect(items.find(({ id }) => id === phone!.id)?.massG).toBe(205);
    expect(backups(workbench)).toBe(1);
  });

  it('is not held up by what is refused and left out', async () => {
    const { value } = openedWorkbench();
    const text = fileOf({
      items: [mine, { ...mine, id: 'heavy', massG: -1 }],
      settings: { currency: 'none' },
    });
    const leaveOut = [{ list: 'items', place: 1 } as const];
    expect(await value('exchange.take', { ...all, leaveOut, text })).toMatchObject({ added: 1, refused: [] });
    expect(await value('exchange.take', { ...all, leaveOut, settings: true, text })).toMatchObject({
      refused: [{ list: 'settings' }],
    });
  });

  it('brings its settings only when asked to', async () => {
    const workbench = openedWorkbench();
    const settings = await workbench.value('settings.get', {});
    const text = fileOf({ settings: { ...settings, currency: 'SEK' } });
    expect(await workbench.value('exchange.take', { ...all, text })).toMatchObject({
      changed: 0,
      former: null,
    });
    expect((await workbench.value('settings.get', {})).currency).toBe(settings.currency);
    expect(await workbench.value('exchange.take', { ...all, settings: true, text })).toMatchObject({
      changed: 1,
    });
    expect((await workbench.value('settings.get', {})).currency).toBe('SEK');
  });

  it('is taken back, and taken again', async () => {
    const { value, folder } = openedWorkbench();
    await value('settings.get', {});
    const before = contentIn(folder);
    const text = fileOf({ items: [mine, { ...phone, massG: 205 }] });
    const { former } = await value('exchange.take', { ...all, text });
    const after = contentIn(folder);
    expect(await value('exchange.takeBack', former!)).toEqual({ putBack: 1 });
    expect(contentIn(folder)).toBe(before);
    await value('exchange.take', { ...all, text });
    expect(contentIn(folder)).toBe(after);
  });
});

describe('a catalogue file on its way out', () => {
  it('says why it could not be written', async () => {
    const { call } = openedWorkbench({ save: () => Promise.reject(new FileFault('storage', 'No room.')) });
    expect(await call('exchange.save', {})).toMatchObject({
      error: { code: 'storage', message: 'No room.' },
    });
  });

  it('is named by the day, and read back changes nothing at all', async () => {
    const workbench = openedWorkbench();
    for (const reading of someReadings.slice(0, 3))
      await workbench.value('readings.save', { reading: { ...reading, on: '2020-05-03' } });
    const text = await savedFile(workbench);
    expect(workbench.saved[0]).toMatchObject({
      fileName: `chargewright-catalogue-${todayFrom(new Date())}.json`,
      mediaType: 'application/json',
    });
    const { entries } = await workbench.value('exchange.preview', { text });
    expect(new Set(entries.map(({ fate }) => fate))).toEqual(new Set(['same']));
    const taking = await workbench.value('exchange.take', { ...all, settings: true, text });
    expect(taking).toEqual({ added: 0, changed: 0, refused: [], former: null });
    expect(await savedFile(workbench)).toBe(text);
    expect(backups(workbench)).toBe(0);
  });
});

describe('a catalogue file that was tampered with', () => {
  /** A file with a part cut out and another put in: sometimes no JSON, sometimes another catalogue. */
  const mutated = (text: string): fc.Arbitrary<string> =>
    fc
      .tuple(
        fc.nat({ max: text.length }),
        fc.nat({ max: 12 }),
        fc.oneof(
          fc.string({ maxLength: 8 }),
          fc.constantFrom('', '1', '"a"', '[', '}', 'null', '-', 'e9', '"__proto__":1,', '\\ud800'),
        ),
      )
      .map(([from, length, put]) => text.slice(0, from) + put + text.slice(from + length));

  it('never makes a fault, and what is stored of it can be taken back', async () => {
    const workbench = openedWorkbench();
    const text = await savedFile(workbench);
    const before = contentIn(workbench.folder);
    await fc.assert(
      fc.asyncProperty(mutated(text), fc.boolean(), async (file, passOverRefused) => {
        const taking = await workbench.call('exchange.take', {
          ...all,
          settings: true,
          passOverRefused,
          text: file,
        });
        expect(workbench.faults).toEqual([]);
        const former = taking.ok ? taking.value.former : null;
        if (former !== null) await workbench.value('exchange.takeBack', former);
        expect(contentIn(workbench.folder)).toBe(before);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });
});
