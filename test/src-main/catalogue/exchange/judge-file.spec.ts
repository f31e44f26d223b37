import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings, demoTours } from '../../../../db/demo/demo.ts';
import type { ExchangeEntry } from '../../../../shared-types/exchange.ts';
import { entriesOf } from '../../../../src-main/catalogue/exchange/judge-file.ts';
import { openedDemo } from '../temporary-catalogue.ts';
import { someEstimate, someReadings } from '../some-readings.ts';
import { fileOf, judged, savedText } from './stored-file.ts';

const [phone, ...others] = demoItems;
const bank = others.find(({ id }) => id === 'demo-bank-20')!;
const [banks] = demoScenarios;
const [tour] = demoTours;
const [reading] = someReadings;

function entries(lists: Readonly<Record<string, unknown>>, options?: Parameters<typeof judged>[2]) {
  return entriesOf(judged(openedDemo().read, fileOf(lists), options));
}

function fates(all: readonly ExchangeEntry[]): string[] {
  return all.map(({ list, place, fate }) => `${list} ${place} ${fate}`);
}

describe('judgeFile() refuses', () => {
  it('what breaks a rule of its schema, with the field, what is allowed and what was given', () => {
    const [first, second, third, fourth] = entries({
      items: [
        { ...phone, id: 'a', massG: 'heavy' },
        { ...phone, id: 'b', kind: 'windmill' },
        7,
        { ...phone, id: 'NOT AN ID', colour: 'red' },
      ],
    });
    expect(first).toMatchObject({
      ...{ fate: 'refused', kind: 'Device', label: 'Phone' },
      reasons: [{ path: 'massG', allowed: 'a number from 0 to 20,000 g', got: '"heavy"' }],
    });
    expect(second).toMatchObject({
      ...{ fate: 'refused', kind: 'Item' },
      reasons: [{ path: 'kind', allowed: expect.stringContaining('a kind, one of: device,') as string }],
    });
    expect(third).toMatchObject({
      label: 'No. 3 of its list',
      reasons: [{ allowed: 'a group of fields', got: '7' }],
    });
    expect(fourth?.reasons.map(({ path, allowed }) => [path, allowed])).toEqual([
      ['id', 'an id of 1 to 64 small letters, digits and hyphens'],
      ['', 'no field named colour'],
    ]);
  });

  it('all that go by one id, and what refers to them', () => {
    const all = entries({
      items: [
        { ...phone, id: 'twice' },
        { ...bank, id: 'twice' },
      ],
      scenarios: [{ ...banks, id: 'mine', kit: [{ itemId: 'twice', quantity: 1 }] }],
      estimates: [someEstimate, { ...someEstimate, value: 56 }],
    });
    expect(fates(all)).toEqual([
      'items 0 refused',
      'items 1 refused',
      'scenarios 0 refused',
      'estimates 0 refused',
      'estimates 1 refused',
    ]);
    expect(all[0]?.reasons).toEqual([
      { path: 'id', allowed: 'an id that stands once among the items', got: '"twice"' },
    ]);
    expect(all[2]?.reasons).toEqual([
      {
        path: 'kit.0.itemId',
        allowed: 'the id of an item of the catalogue or of this file',
        got: '"twice", which is refused',
      },
    ]);
  });

  it('what refers to nothing, or to what is left out', () => {
    const mine = { ...bank, id: 'mine' };
    const lists = {
      items: [mine],
      tours: [{ ...tour, id: 'away', leftAtHome: ['mine'] }],
      readings: [
        { ...reading, id: 'noted', itemId: 'mine' },
        { ...reading, id: 'lost', itemId: 'nobody' },
      ],
      settings: { ...demoSettings, tourId: 'away' },
    };
    expect(fates(entries(lists))).toEqual([
      'items 0 new',
      'tours 0 new',
      'readings 0 new',
      'readings 1 refused',
      'settings 0 changed',
    ]);
    const without = entries(lists, { leaveOut: [{ list: 'items', place: 0 }] });
    expect(fates(without).slice(1)).toEqual([
      'tours 0 refused',
      'readings 0 refused',
      'readings 1 refused',
      'settings 0 refused',
    ]);
    expect(without[1]?.reasons[0]?.got).toBe('"mine", which is left out');
    expect(without[3]?.reasons[0]?.got).toBe('"nobody"');
  });

  it('another kind under the id of an item, a value that its kind has not, and figures out of order', () => {
    const [item, odd, turned] = entries({
      items: [{ ...phone, id: bank.id }],
      estimates: [
        { ...someEstimate, measure: 'panel-power' },
        { ...someEstimate, low: 60 },
      ],
    });
    expect(item?.reasons).toEqual([
      { path: 'kind', allowed: 'the kind that this id has here, bank', got: 'device' },
    ]);
    expect(odd?.reasons).toMatchObject([{ path: 'measure', got: 'panel-power' }]);
    expect(turned?.reasons).toMatchObject([
      { path: 'value', allowed: 'a value from its low to its high end' },
    ]);
  });

  it('what the rules refuse, but not what stands there already in the same words', () => {
    const fault = { path: 'startDate', allowed: 'a day with a tailwind', got: 'a headwind' };
    const rules = { tourFaults: () => [fault], readingFaults: () => [] };
    const all = entries({ tours: [tour, { ...tour, id: 'another' }] }, { rules });
    expect(fates(all)).toEqual(['tours 0 same', 'tours 1 refused']);
    expect(all[1]?.reasons).toEqual([fault]);
  });

  it('with the first reasons named and the rest counted', () => {
    const kit = Array.from({ length: 10 }, (_, place) => ({ itemId: `gone-${place}`, quantity: 1 }));
    const [scenario] = entries({ scenarios: [{ ...banks, kit }] });
    expect([scenario?.reasons.length, scenario?.more]).toEqual([6, 4]);
  });
});

describe('judgeFile()', () => {
  it('finds nothing to do in a file of the catalogue itself', () => {
    const { read } = openedDemo();
    const all = entriesOf(judged(read, savedText(read)));
    expect(all).toHaveLength(demoItems.length + demoTours.length + demoScenarios.length + 1);
    expect(new Set(all.map(({ fate }) => fate))).toEqual(new Set(['same']));
  });

  it('names the fields in which an entry differs', () => {
    const [changed] = entries({ items: [{ ...bank, massG: 999, state: 'retired' }] });
    expect(changed).toMatchObject({
      ...{ fate: 'changed', kind: 'Bank', label: bank.label, more: 0 },
      changes: [
        { path: 'state', before: 'owned', after: 'retired' },
        { path: 'massG', before: bank.massG, after: 999 },
      ],
    });
  });

  it('marks new items that look like one that is there, or like one above', () => {
    const strap = { ...demoItems.find(({ kind }) => kind === 'accessory')!, label: 'Strap' };
    const all = entries({
      items: [
        { ...phone, id: 'a', label: ` ${phone!.label.toUpperCase()}` },
        { ...strap, id: 'b' },
        { ...strap, id: 'c' },
        { ...strap, id: 'd', label: 'Hook' },
      ],
    });
    expect(all.map(({ fate, twin }) => [fate, twin])).toEqual([
      ['new', 'inventory'],
      ['new', null],
      ['new', 'file'],
      ['new', null],
    ]);
  });

  it('says which new entries an entry needs, and of what and when a reading is', () => {
    const all = entries({
      items: [bank, { ...bank, id: 'mine', label: 'My bank' }],
      readings: [{ ...reading, id: 'noted', itemId: 'mine' }],
    });
    expect(all[2]).toMatchObject({
      ...{ kind: 'Reading', label: 'My bank, 3 May 2027' },
      needs: [{ list: 'items', place: 1 }],
    });
  });
});
