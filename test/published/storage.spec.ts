import { describe, it } from 'vitest';
import { labelWh } from '../../shared-types/item.ts';
import { linkW } from '../../src-main/model/storage/port-power.ts';
import { storedAfterWh } from '../../src-main/model/storage/taper.ts';
import { expectNear } from '../support/near.ts';

describe('watt-hours of a label', () => {
  // Wh = Ah x nominal cell voltage; the 100 Wh line of ICAO Doc 9284 lies between 27,000 and 27,100 mAh at 3.7 V.
  it.each([
    { mAh: 10_000, cellV: 3.7, wh: 37 },
    { mAh: 20_000, cellV: 3.7, wh: 74 },
    { mAh: 27_000, cellV: 3.7, wh: 99.9 },
    { mAh: 27_100, cellV: 3.7, wh: 100.27 },
    { mAh: 10_000, cellV: 3.6, wh: 36 },
  ])('$mAh mAh at $cellV V are $wh Wh', ({ mAh, cellV, wh }) => {
    expectNear(labelWh({ as: 'mah', mAh, cellV }), wh, 1e-6, 'energy');
  });
  it('about 26,000 mAh are about 100 Wh', () => {
    // Common practice, no source: the rule of thumb is 4 % from the arithmetic.
    expectNear(labelWh({ as: 'mah', mAh: 26_000, cellV: 3.7 }), 100, 5, 'energy');
  });
});

describe('power of a USB link', () => {
  // USB 2.0; USB 3.x; Battery Charging 1.2; Type-C Current; Power Delivery (IEC 62680-1-2, IEC 62680-1-3).
  const strong = { standard: 'pd', powerW: 100 } as const;
  it.each([
    { standard: 'usb-2', watts: 2.5 },
    { standard: 'usb-3', watts: 4.5 },
    { standard: 'bc-1.2', watts: 7.5 },
    { standard: 'type-c-1.5a', watts: 7.5 },
    { standard: 'type-c-3a', watts: 15 },
  ] as const)('$standard carries at most $watts W', ({ standard, watts }) => {
    expectNear(linkW(strong, { standard, powerW: 100 }), watts, 1e-9, 'link');
  });
  it('a fast input fills a bank up to three times faster than a plain one', () => {
    // Common practice, no source.
    const plain = linkW(strong, { standard: 'bc-1.2', powerW: 7.5 });
    const fast = linkW(strong, { standard: 'pd', powerW: 20 });
    expectNear(fast / plain, 2.7, 0.4, 'ratio');
  });
});

describe('a charge with a taper', () => {
  // Kollmeyer 2018, doi 10.17632/wykht8y7tg.1: one 2.9 Ah cell at 1C, six charges: 47 to 49 % of the time and 80 to 82 % of
  // the energy come before the taper, 98 % of the charge is there after three quarters of the time.
  const capacityWh = 10.84;
  const limitW = (capacityWh * 0.81) / (100.8 * 0.48) / (1 / 60);
  it('has stored 80 to 82 % after 48 % of the measured time', () => {
    const stored = storedAfterWh(0, capacityWh, limitW, limitW, (100.8 * 0.48) / 60);
    expectNear(stored / capacityWh, 0.81, 0.02, 'share');
  });
  it('has stored 97 to 100 % after three quarters of the measured time', () => {
    const stored = storedAfterWh(0, capacityWh, limitW, limitW, (100.8 * 0.75) / 60);
    expectNear(stored / capacityWh, 0.98, 0.03, 'share');
  });
});
