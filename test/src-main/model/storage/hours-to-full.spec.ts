import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hoursToFull } from '../../../../src-main/model/storage/hours-to-full.ts';
import { fullShare, storedAfterWh } from '../../../../src-main/model/storage/taper.ts';
import { expectNear } from '../../../support/near.ts';

describe('hoursToFull()', () => {
  it('is nothing for what stores nothing', () => expect(hoursToFull(0, 0, 10, 10)).toBe(0));

  // A store of 50 Wh that tapers over its last 10 and is full at 49: 0.98 of it.
  it.each([
    {
      what: 'at full power: 40 Wh at 10 W, then 10 Wh / 10 W x ln(10 / 1)',
      powerW: 10,
      hours: 4 + Math.log(10),
    },
    { what: 'at half of it: 45 Wh at 5 W, then 10 Wh / 10 W x ln(5 / 1)', powerW: 5, hours: 9 + Math.log(5) },
    { what: 'of a trickle that never meets the taper: 49 Wh at 0.5 W', powerW: 0.5, hours: 98 },
    { what: 'of more than the store takes, as if at its limit', powerW: 90, hours: 4 + Math.log(10) },
  ])('is the time $what', ({ powerW, hours }) => {
    expectNear(hoursToFull(50, 10, powerW, 10), hours, 1e-9, 'time to full, h');
  });

  it('ends where the charge itself is full', () => {
    const store = fc.record({
      capacityWh: fc.double({ min: 1, max: 300, noNaN: true }),
      batteries: fc.integer({ min: 1, max: 4 }),
      powerW: fc.double({ min: 0.1, max: 60, noNaN: true }),
      limitW: fc.double({ min: 0.5, max: 60, noNaN: true }),
    });
    fc.assert(
      fc.property(store, ({ capacityWh, batteries, powerW, limitW }) => {
        const roomWh = (capacityWh / batteries) * 0.2;
        const hours = hoursToFull(capacityWh, roomWh, powerW, limitW);
        const after = storedAfterWh(0, capacityWh, roomWh, powerW, limitW, hours);
        expectNear(after, capacityWh * fullShare, 1e-9 * capacityWh, 'stored when full, Wh');
      }),
    );
  });
});
