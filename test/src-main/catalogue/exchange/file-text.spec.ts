import { describe, expect, it } from 'vitest';
import { saveItem } from '../../../../src-main/catalogue/items.ts';
import { saveReading } from '../../../../src-main/catalogue/readings.ts';
import { demoItems } from '../../../../db/demo/demo.ts';
import { openedDemo } from '../temporary-catalogue.ts';
import { someReadings } from '../some-readings.ts';
import { savedText } from './stored-file.ts';

describe('catalogueFileText()', () => {
  it('gives an entry a line, and a change shows in its line alone', () => {
    const { read, write } = openedDemo();
    const before = savedText(read).split('\n');
    expect(before.slice(0, 6)).toEqual([
      '{',
      '  "format": "chargewright-catalogue",',
      '  "formatVersion": 1,',
      '  "madeOn": "2027-04-18",',
      '  "program": "0.0.0",',
      '  "items": [',
    ]);
    const { id, ...camera } = demoItems.find((item) => item.id === 'demo-camera')!;
    saveItem(write, { ...camera, label: 'A first label in the list' }, id);
    const after = savedText(read).split('\n');
    expect(after.filter((line, place) => line !== before[place])).toEqual([
      expect.stringMatching(/^ {4}\{"id":"demo-camera","label":"A first label in the list",/),
    ]);
  });

  it('is the same text for the same catalogue, however it came to be', () => {
    const [one, other] = [openedDemo(), openedDemo()];
    const [first, second] = someReadings;
    saveReading(one.write, first!, 'b');
    saveReading(one.write, second!, 'a');
    saveReading(other.write, first!, 'b');
    saveReading(other.write, second!, 'a');
    for (const { id, ...item } of demoItems.toReversed()) saveItem(other.write, item, id);
    expect(savedText(other.read)).toBe(savedText(one.read));
  });
});
