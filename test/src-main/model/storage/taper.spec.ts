import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { storedAfterWh, taperRoomWh } from '../../../../src-main/model/storage/taper.ts';
import { expectNear } from '../../../support/near.ts';

const anyCharge = fc.record({
  capacityWh: fc.double({ min: 1, max: 100, noNaN: true }),
  batteries: fc.integer({ min: 1, max: 4 }),
  full: fc.double({ min: 0, max: 1, noNaN: true }),
  powerW: fc.double({ min: 0.1, max: 60, noNaN: true }),
  limitW: fc.double({ min: 0.5, max: 40, noNaN: true }),
  hours: fc.double({ min: 0, max: 3, noNaN: true }),
});

/** One battery of the given capacity. */
const after = (storedWh: number, capacityWh: number, powerW: number, limitW: number, hours: number): number =>
  storedAfterWh(storedWh, capacityWh, taperRoomWh(capacityWh), powerW, limitW, hours);

describe('storedAfterWh()', () => {
  it.each([
    { what: 'no power', storedWh: 5, capacityWh: 10, powerW: 0, hours: 1, stays: 5 },
    { what: 'no time', storedWh: 5, capacityWh: 10, powerW: 10, hours: 0, stays: 5 },
    { what: 'a full store', storedWh: 10, capacityWh: 10, powerW: 10, hours: 1, stays: 10 },
    { what: 'no capacity', storedWh: 0, capacityWh: 0, powerW: 10, hours: 1, stays: 0 },
  ])('changes nothing with $what', ({ storedWh, capacityWh, powerW, hours, stays }) => {
    expect(after(storedWh, capacityWh, powerW, 10, hours)).toBe(stays);
  });

  describe('with an 18 W charger at an empty bank of 37 Wh that stores nine tenths', () => {
    // 16.2 W into the cells; the taper begins at 0.8 x 37 = 29.6 Wh, after 29.6 / 16.2 = 1.8272 h, with 7.4 Wh to go.
    const cellsW = 18 * 0.9;
    it('stores at full power up to the taper', () => {
      expectNear(after(0, 37, cellsW, cellsW, 1), 16.2, 1e-9, 'after an hour, Wh');
      expectNear(after(0, 37, cellsW, cellsW, 1.8272), 29.6, 1e-3, 'at the taper, Wh');
    });
    it('halves what is left every 19 minutes from there', () => {
      // Time constant 7.4 / 16.2 = 0.45679 h, half of it gone in ln 2 of that: 0.31662 h.
      expectNear(after(0, 37, cellsW, cellsW, 1.8272 + 0.3166), 33.3, 1e-3, 'half of the rest, Wh');
      expectNear(after(0, 37, cellsW, cellsW, 1.8272 + 0.6332), 35.15, 1e-3, 'a quarter is left, Wh');
    });
    it('stores 36.43 Wh in three hours', () => {
      // 37 - 7.4 exp(-(3 - 1.8272) / 0.45679) = 37 - 7.4 x 0.07673.
      expectNear(after(0, 37, cellsW, cellsW, 3), 36.432, 1e-3, 'stored, Wh');
    });
  });

  it('takes no more than its limit from a stronger charger', () => {
    expect(after(0, 37, 60, 18, 1)).toBe(18);
  });

  it('lets a weak source charge at full power until its own, later taper', () => {
    // At a third of the limit the falling limit is met with a third of the taper's room of 6 Wh left.
    expectNear(after(0, 30, 6, 18, 28 / 6), 28, 1e-9, 'stored, Wh');
  });

  it('ends a long step where sixty short ones end', () => {
    fc.assert(
      fc.property(anyCharge, ({ capacityWh, batteries, full, powerW, limitW, hours }) => {
        const start = full * capacityWh;
        const roomWh = taperRoomWh(capacityWh / batteries);
        const once = storedAfterWh(start, capacityWh, roomWh, powerW, limitW, hours);
        let stored = start;
        for (let minute = 0; minute < 60; minute += 1)
          stored = storedAfterWh(stored, capacityWh, roomWh, powerW, limitW, hours / 60);
        // A tenth of a per cent is asked for; the closed form leaves rounding.
        expectNear(stored, once, 1e-9 * capacityWh, 'stored, Wh');
      }),
    );
  });

  it('never overfills, never empties, never beats the power', () => {
    fc.assert(
      fc.property(anyCharge, ({ capacityWh, batteries, full, powerW, limitW, hours }) => {
        const start = full * capacityWh;
        const roomWh = taperRoomWh(capacityWh / batteries);
        const end = storedAfterWh(start, capacityWh, roomWh, powerW, limitW, hours);
        expect(end).toBeLessThanOrEqual(capacityWh + 1e-9);
        expect(end).toBeGreaterThanOrEqual(start - 1e-9);
        expect(end - start).toBeLessThanOrEqual(Math.min(powerW, limitW) * hours + 1e-9);
      }),
    );
  });
});

describe('taperRoomWh()', () => {
  it('is a fifth of a battery', () => expectNear(taperRoomWh(37), 7.4, 1e-9, 'room, Wh'));
  it('makes the last of three batteries taper alone', () => {
    // Three of 10 Wh, one after the other: 28 Wh at full power, then 2 Wh of room.
    const stored = (hours: number): number => storedAfterWh(0, 30, taperRoomWh(10), 10, 10, hours);
    expectNear(stored(2.8), 28, 1e-9, 'stored, Wh');
    expectNear(stored(3), 30 - 2 * Math.exp(-1), 1e-9, 'stored, Wh');
  });
});
