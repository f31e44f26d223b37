import { describe, expect, it } from 'vitest';
import { saveItem } from '../../../src-main/catalogue/items.ts';
import { keepEstimate, listKeptEstimates } from '../../../src-main/catalogue/reading-estimates.ts';
import { listReadings, removeReading, saveReading } from '../../../src-main/catalogue/readings.ts';
import { demoItems } from '../../../db/demo/demo.ts';
import { someEstimate, someReadings } from './some-readings.ts';
import { openedDemo } from './temporary-catalogue.ts';

describe('saveReading()', () => {
  it('refuses a reading of an item that is not there, and says where', () => {
    const { write } = openedDemo();
    expect(saveReading(write, { ...someReadings[0]!, itemId: 'gone' })).toMatchObject({
      ok: false,
      error: { code: 'not-found', fields: [{ path: 'reading.itemId' }] },
    });
    expect(listReadings(write)).toEqual([]);
  });

  it.each(someReadings)('gives back a reading of $as as it was', (draft) => {
    const { write, read } = openedDemo();
    const saved = saveReading(write, draft, 'mine');
    expect(saved).toEqual({ ok: true, value: { ...draft, id: 'mine' } });
    expect(listReadings(read)).toEqual([{ ...draft, id: 'mine' }]);
  });

  it('replaces a reading by one of another form', () => {
    const { write } = openedDemo();
    saveReading(write, someReadings[2]!, 'mine');
    saveReading(write, someReadings[0]!, 'mine');
    expect(listReadings(write)).toEqual([{ ...someReadings[0], id: 'mine' }]);
  });
});

describe('listReadings()', () => {
  it('has the newest date first, and of one day the last that came in', () => {
    const { write } = openedDemo();
    const days = ['2027-05-02', '2027-05-04', '2027-05-04', '2027-05-01'];
    days.forEach((on, at) => saveReading(write, { ...someReadings[0]!, on }, `r${at}`));
    expect(listReadings(write).map(({ id }) => id)).toEqual(['r2', 'r1', 'r0', 'r3']);
  });
});

describe('removeReading()', () => {
  it('answers what was removed, once', () => {
    const { write } = openedDemo();
    saveReading(write, someReadings[3]!, 'mine');
    expect(removeReading(write, 'mine')).toEqual({ ...someReadings[3], id: 'mine' });
    expect(removeReading(write, 'mine')).toBeNull();
  });
});

describe('a kept estimate', () => {
  it('takes the place of the one before', () => {
    const { write, read } = openedDemo();
    keepEstimate(write, someEstimate);
    keepEstimate(write, { ...someEstimate, value: 54, readings: 6 });
    expect(listKeptEstimates(read)).toEqual([{ ...someEstimate, value: 54, readings: 6 }]);
  });

  it('and the readings outlast an edit of their item', () => {
    const { write } = openedDemo();
    saveReading(write, someReadings[0]!);
    keepEstimate(write, someEstimate);
    const { id, ...draft } = demoItems.find((item) => item.id === someEstimate.itemId)!;
    saveItem(write, { ...draft, label: 'Renamed' }, id);
    expect([listReadings(write).length, listKeptEstimates(write).length]).toEqual([1, 1]);
  });
});
