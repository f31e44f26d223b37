import { describe, expect, it } from 'vitest';
import { keepEstimate } from '../../../src-main/catalogue/reading-estimates.ts';
import { saveReading } from '../../../src-main/catalogue/readings.ts';
import type { WriteDb } from '../../../src-main/catalogue/connection.ts';
import { someEstimate, someReadings } from './some-readings.ts';
import { openedDemo } from './temporary-catalogue.ts';

/* The field log tried past every schema; schema.spec.ts has the ranges of its numbers. */

function openedLog(): WriteDb {
  const { write } = openedDemo();
  for (const reading of someReadings) saveReading(write, reading);
  keepEstimate(write, someEstimate);
  return write;
}

describe('the field log in raw SQL', () => {
  it.each([
    ['an unknown form of reading', "UPDATE readings SET form = 'guess'"],
    ['a reading on a day that no calendar has', "UPDATE readings SET taken_on = '2027-02-31'"],
    ['a reading in two forms', "UPDATE readings SET counted_wh = 5 WHERE form = 'charge'"],
    ['a charge that is told twice', "UPDATE readings SET after_share = 0.5 WHERE form = 'charge'"],
    ['mAh without the voltage at the meter', 'UPDATE readings SET meter_v = NULL'],
    ['use told by lights', "UPDATE readings SET before_share = NULL, before_lit = 2 WHERE form = 'use'"],
    ['use without hours', "UPDATE readings SET hours = NULL WHERE form = 'use'"],
    ['an unknown activity of a reading', "UPDATE readings SET during = 'flying' WHERE form = 'use'"],
    ['a note of 501 characters', "UPDATE readings SET note = printf('%.501c', 'x')"],
    ['a distance of no ride', "UPDATE readings SET distance_km = 5 WHERE form = 'sun'"],
    ['an unknown measure', "UPDATE kept_estimates SET measure = 'charm'"],
    ['an interval that leaves its value out', 'UPDATE kept_estimates SET low = 56'],
    ['a value kept on no day', "UPDATE kept_estimates SET kept_on = 'now'"],
  ])('is refused for %s', (_, sql) => {
    expect(() => openedLog().exec(sql)).toThrow(/CHECK constraint failed/);
  });

  it.each([
    ['a reading of no item', "UPDATE readings SET item_id = 'gone'"],
    ['an item with readings that is removed', "DELETE FROM items WHERE id = 'demo-bank-20'"],
    ['an estimate of no item', "UPDATE kept_estimates SET item_id = 'gone'"],
  ])('is refused for %s', (_, sql) => {
    expect(() => openedLog().exec(sql)).toThrow(/FOREIGN KEY constraint failed/);
  });
});
