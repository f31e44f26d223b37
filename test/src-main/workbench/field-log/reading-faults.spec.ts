import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import type { Item } from '../../../../shared-types/item.ts';
import type { ReadingDraft } from '../../../../shared-types/reading.ts';
import { readingFaults } from '../../../../src-main/workbench/field-log/reading-faults.ts';

const today = '2027-05-06';
const item = (id: string): Item => demoItems.find((each) => each.id === id)!;
const [bank, hub] = [item('demo-bank-20'), item('demo-hub-3')];
const unlit: Item = { ...bank, lights: 0 } as Item;

const ride = (distanceKm: number | null, hours = 2): ReadingDraft => ({
  ...{ as: 'ride', itemId: hub.id, on: today, note: '' },
  ...{ energy: { as: 'meter-wh', wh: 6 }, hours, distanceKm },
});
const lit = (before: number, after: number): ReadingDraft => ({
  ...{ as: 'delivery', itemId: bank.id, on: today, note: '' },
  ...{ energy: { as: 'meter-wh', wh: 20 } },
  before: { as: 'lights', lit: before },
  after: { as: 'lights', lit: after },
});

function fieldsOf(draft: ReadingDraft, of: Item): readonly string[] {
  const fault = readingFaults(draft, of, today);
  return fault === null || fault.ok
    ? []
    : fault.error.fields.map(({ path, allowed, got }) => `${path}: ${allowed}; ${got}`);
}

describe('readingFaults()', () => {
  it('names a distance that nobody rides in the hours given, and what is allowed', () => {
    expect(fieldsOf(ride(1200), hub)).toEqual([
      'reading.distanceKm: at most 120 km in 2 h, a mean of 60 km/h; a mean of 600 km/h',
    ]);
  });

  it('names a ride of a bank by its kind', () => {
    expect(fieldsOf(ride(30), bank)[0]).toMatch(/^reading\.as: of a bank: .*; what it gave while/);
  });

  it('names both ends where both have more lights than the bank', () => {
    expect(fieldsOf(lit(6, 5), bank).map((text) => text.split(':')[0])).toEqual([
      'reading.before.lit',
      'reading.after.lit',
    ]);
  });

  it('asks for per cent of a bank without lights', () => {
    expect(fieldsOf(lit(3, 1), unlit)[0]).toMatch(/^reading\.before\.lit: per cent: .* has no lights/);
  });

  it('tells of a day to come and of the order at once', () => {
    const faults = fieldsOf({ ...lit(1, 3), on: '2027-05-07' }, bank);
    expect(faults.map((text) => text.split(':')[0])).toEqual(['reading.on', 'reading.after.lit']);
  });

  it('takes a ride at the fastest mean there is, and one without a distance', () => {
    expect([...fieldsOf(ride(120), hub), ...fieldsOf(ride(null), hub)]).toEqual([]);
  });

  it('takes equal lights, between which something may have gone', () => {
    expect(fieldsOf(lit(3, 3), bank)).toEqual([]);
  });
});
