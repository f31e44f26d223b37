import { describe, expect, it } from 'vitest';
import { labelWh } from '../../shared-types/item.ts';
import { usualItem } from '../../shared-types/usual-item.ts';
import { mayCharge } from '../../src-main/model/storage/charging-temperature.ts';
import { usableShare } from '../../src-main/model/storage/cold.ts';
import { linkW } from '../../src-main/model/storage/port-power.ts';
import { storedAfterWh, taperRoomWh } from '../../src-main/model/storage/taper.ts';
import { expectNear } from '../support/near.ts';

describe('watt-hours of a label', () => {
  // Wh = Ah x nominal cell voltage; the 100 and 160 Wh lines of ICAO Doc 9284 lie at 27.027 and 43.243 Ah of 3.7 V, and the
  // first at 27.778 Ah of 3.6 V. The Ah are printed to 1 mAh, which is 0.004 Wh.
  it.each([
    { mAh: 10_000, cellV: 3.7, wh: 37 },
    { mAh: 10_000, cellV: 3.6, wh: 36 },
    { mAh: 20_000, cellV: 3.7, wh: 74 },
    { mAh: 27_027, cellV: 3.7, wh: 100 },
    { mAh: 27_778, cellV: 3.6, wh: 100 },
    { mAh: 43_243, cellV: 3.7, wh: 160 },
  ])('$mAh mAh at $cellV V are $wh Wh', ({ mAh, cellV, wh }) =>
    expectNear(labelWh({ as: 'mah', mAh, cellV }), wh, 0.004, 'energy, Wh'),
  );
  it('about 26,000 mAh are about 100 Wh', () =>
    // Common practice, no source: the rule of thumb is 4 % from the arithmetic.
    expectNear(labelWh({ as: 'mah', mAh: 26_000, cellV: 3.7 }), 100, 5, 'energy, Wh'));
});

describe('what a rider knows of a bank', () => {
  it('is bounded by a light step of 25 per cent', () => {
    // Common practice, no source: most banks have four lights, so a bank of 74 Wh is known to 18.5 Wh.
    const { lights } = usualItem('bank', 'EUR');
    expectNear(1 / lights, 0.25, 1e-9, 'share of a light');
    expectNear(labelWh({ as: 'mah', mAh: 20_000, cellV: 3.7 }) / lights, 18.5, 1e-9, 'light, Wh');
  });
});

describe('a fast input', () => {
  const strong = { standard: 'pd', powerW: 100 } as const;
  const plain = linkW(strong, { standard: 'bc-1.2', powerW: 7.5, cable: 'a-plug' });
  const fast = linkW(strong, { standard: 'pd', powerW: 20, cable: 'c-3a' });
  /** Time to store four fifths of a 37 Wh bank at nine tenths, h. */
  const hoursAt = (watts: number): number => {
    let hours = 0;
    const minute = 1 / 60;
    for (let wh = 0; wh < 0.8 * 37; hours += minute)
      wh = storedAfterWh(wh, 37, taperRoomWh(37), watts * 0.9, watts * 0.9, minute);
    return hours;
  };
  it('fills a bank up to three times faster than a plain one', () =>
    // Common practice, no source: 18 to 22.5 W against 7.5 W, 2.4 to 3 times.
    expectNear(hoursAt(plain) / hoursAt(fast), 2.7, 0.3, 'times as fast'));
});

describe('a charge with a taper', () => {
  /*
   * Kollmeyer 2018, doi 10.17632/wykht8y7tg.1: one 2.9 Ah cell at 1C, 10.8375 Wh in 100.8 min; 80 to 82 % of the energy and 47
   * to 49 % of the time come before the taper, so 1C is 0.81 of the energy in 0.48 of the time.
   */
  const [capacityWh, wholeMin] = [10.8375, 100.8];
  const limitW = (0.81 * capacityWh) / ((0.48 * wholeMin) / 60);
  const shareAfter = (minutes: number): number =>
    storedAfterWh(0, capacityWh, taperRoomWh(capacityWh), limitW, limitW, Math.max(0, minutes) / 60) /
    capacityWh;
  // One exponential fits the end of a charge badly, so its time is held to 5 % of the whole, as the reading of the data advises.
  const toleranceMin = 0.05 * wholeMin;

  it.each([
    { charge: 0.25, minute: 14.4 },
    { charge: 0.5, minute: 28.8 },
    { charge: 0.7, minute: 40.3 },
    { charge: 0.8, minute: 46.1 },
    { charge: 0.9, minute: 53.5 },
    { charge: 0.95, minute: 63.4 },
    { charge: 0.98, minute: 76.2 },
  ])('has stored $charge within 5 minutes of minute $minute', ({ charge, minute }) => {
    expect(shareAfter(minute - toleranceMin)).toBeLessThan(charge);
    expect(shareAfter(minute + toleranceMin)).toBeGreaterThan(charge);
  });
  it('is full to a hundredth after the whole time', () =>
    // The measured one ended at 50 mA, 1.7 % of its current.
    expectNear(shareAfter(wholeMin), 1, 0.01, 'share'));
});

describe('capacity in the cold', () => {
  // Kollmeyer 2018, same cell: discharges to 2.5 V at 0.3C in a climate chamber; shares printed to three decimals.
  it.each([
    { degC: 25, ampereHours: 2.8326, share: 1 },
    { degC: 10, ampereHours: 2.6502, share: 0.936 },
    { degC: 0, ampereHours: 2.5029, share: 0.884 },
    { degC: -10, ampereHours: 2.3728, share: 0.838 },
    { degC: -20, ampereHours: 2.2353, share: 0.789 },
  ])('is $share at $degC degC', ({ degC, ampereHours, share }) => {
    expectNear(usableShare(degC), share, 1e-9, 'share of the capacity');
    expectNear(usableShare(degC), ampereHours / 2.8326, 0.0005, 'share of the ampere-hours');
  });
  it.each([
    { degC: 10, share: 0.946 },
    { degC: 0, share: 0.893 },
    { degC: -10, share: 0.84 },
    { degC: -20, share: 0.787 },
  ])('agrees with the pulse tests of the same cell at $degC degC', ({ degC, share }) =>
    // The two series of the data set are up to 0.010 apart.
    expectNear(usableShare(degC), share, 0.011, 'share of the capacity'),
  );
});

describe('charging temperature', () => {
  // The usual limits of lithium cells, 0 to 45 degC; not below 0: US Fire Administration after NFPA, usfa.fema.gov.
  it.each([
    { degC: -0.1, allowed: false },
    { degC: 0, allowed: true },
    { degC: 45, allowed: true },
    { degC: 45.1, allowed: false },
  ])('of $degC degC: allowed is $allowed', ({ degC, allowed }) => expect(mayCharge(degC)).toBe(allowed));
});
