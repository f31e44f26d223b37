import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { storedAfterWh } from '../../../../src-main/model/storage/taper.ts';
import { expectNear } from '../../../support/near.ts';

const anyCharge = fc.record({
  capacityWh: fc.double({ min: 1, max: 100, noNaN: true }),
  full: fc.double({ min: 0, max: 1, noNaN: true }),
  powerW: fc.double({ min: 0.1, max: 60, noNaN: true }),
  limitW: fc.double({ min: 0.5, max: 40, noNaN: true }),
  hours: fc.double({ min: 0, max: 3, noNaN: true }),
});

describe('storedAfterWh()', () => {
  it.each([
    { what: 'no power', storedWh: 5, capacityWh: 10, powerW: 0, hours: 1, after: 5 },
    { what: 'no time', storedWh: 5, capacityWh: 10, powerW: 10, hours: 0, after: 5 },
    { what: 'a full store', storedWh: 10, capacityWh: 10, powerW: 10, hours: 1, after: 10 },
    { what: 'no capacity', storedWh: 0, capacityWh: 0, powerW: 10, hours: 1, after: 0 },
  ])('changes nothing with $what', ({ storedWh, capacityWh, powerW, hours, after }) => {
    expect(storedAfterWh(storedWh, capacityWh, powerW, 10, hours)).toBe(after);
  });

  it('takes an 18 W charger 1.64 h to bring 37 Wh to the taper', () => {
    // Closed form: 0.8 x 37 Wh / 18 W.
    expectNear(storedAfterWh(0, 37, 18, 18, (0.8 * 37) / 18), 29.6, 1e-9, 'stored, Wh');
  });

  it('lets a weak source charge at full power until its own, later taper', () => {
    // At a third of the limit the falling limit is met with a third of the taper's room left.
    expectNear(storedAfterWh(0, 30, 6, 18, 28 / 6), 28, 1e-9, 'stored, Wh');
  });

  it('ends a long step where sixty short ones end', () => {
    fc.assert(
      fc.property(anyCharge, ({ capacityWh, full, powerW, limitW, hours }) => {
        const start = full * capacityWh;
        const once = storedAfterWh(start, capacityWh, powerW, limitW, hours);
        let stored = start;
        for (let i = 0; i < 60; i += 1)
          stored = storedAfterWh(stored, capacityWh, powerW, limitW, hours / 60);
        expectNear(stored, once, 1e-9 * capacityWh, 'stored, Wh');
      }),
    );
  });

  it('never overfills, never empties, never beats the power', () => {
    fc.assert(
      fc.property(anyCharge, ({ capacityWh, full, powerW, limitW, hours }) => {
        const start = full * capacityWh;
        const after = storedAfterWh(start, capacityWh, powerW, limitW, hours);
        expect(after).toBeLessThanOrEqual(capacityWh + 1e-9);
        expect(after).toBeGreaterThanOrEqual(start - 1e-9);
        expect(after - start).toBeLessThanOrEqual(Math.min(powerW, limitW) * hours + 1e-9);
      }),
    );
  });
});
