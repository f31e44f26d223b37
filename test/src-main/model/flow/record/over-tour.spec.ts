import { describe, expect, it } from 'vitest';
import { dayAccounts } from '../../../../../src-main/model/flow/record/accounts.ts';
import { meanOverTourWh } from '../../../../../src-main/model/flow/record/over-tour.ts';
import type { TourRecord } from '../../../../../src-main/model/flow/record/recorder.ts';

const nothing = new Float64Array(0);

/** Two days of sums over four histories: account number k holds 10 k + 1 on the first day and 10 k + 2 on the second. */
const record: TourRecord = {
  histories: 4,
  days: Float64Array.from([1, 2].flatMap((day) => dayAccounts.map((_, account) => 10 * account + day))),
  devices: nothing,
  storedWh: new Float32Array(0),
  pointsPerDay: 1,
  lowestWh: nothing,
  flatStep: new Int32Array(0),
  flatDevice: new Int32Array(0),
  flatOnDay: new Uint8Array(0),
};

describe('meanOverTourWh()', () => {
  it('adds one account over the days and takes the mean over the histories', () => {
    // Demand is the first account: (1 + 2) / 4. Unserved is the second: (11 + 12) / 4.
    expect(meanOverTourWh(record, 'demand')).toBe(0.75);
    expect(meanOverTourWh(record, 'unserved')).toBe(5.75);
  });
});
