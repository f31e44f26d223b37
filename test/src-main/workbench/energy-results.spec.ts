import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dayLedgersOf,
  deviceLedgersOf,
  firstShortOf,
  marginOf,
  reserveOf,
  riskOf,
  riskOnDays,
  spilledShareOf,
  storedCourseOf,
} from '../../../src-main/workbench/energy-results.ts';
import {
  dayAccounts,
  deviceAccounts,
  type DayAccount,
} from '../../../src-main/model/flow/record/accounts.ts';
import { recordHistories } from '../../../src-main/model/flow/record/record-histories.ts';
import type { TourRecord } from '../../../src-main/model/flow/record/recorder.ts';
import type { MarginResult } from '../../../src-main/model/flow/margin.ts';
import { compileNetwork } from '../../../src-main/model/flow/network.ts';
import { usualRules } from '../../../shared-types/scenario.ts';
import { expectNear } from '../../support/near.ts';
import { anyRun } from '../../support/random-flow.ts';

const stepsPerDay = 24;

const device = (label: string, mustHave: boolean) => ({
  ...{ label, key: label, mustHave, capacityWh: 10, batteryWh: 10, efficiencyIn: 0.9, pluggedW: 0 },
  input: { standard: 'pd', powerW: 10, cable: 'c-3a' } as const,
  ridesWhere: 'on-bicycle' as const,
  useW: [0, 0, 0, 0] as const,
});
/** Compiled: navigation and phone, then the camera. */
const network = compileNetwork({
  devices: [device('Camera', false), device('Navigation', true), device('Phone', true)],
  ...{ banks: [], chargers: [], rules: usualRules },
});
const [navigation, phone] = [0, 1];

const nothing: TourRecord = {
  histories: 4,
  days: new Float64Array(0),
  devices: new Float64Array(0),
  storedWh: new Float32Array(0),
  pointsPerDay: 1,
  lowestWh: new Float64Array(4),
  flatStep: new Int32Array(4).fill(-1),
  flatDevice: new Int32Array(4).fill(-1),
  flatOnDay: new Uint8Array(0),
};

/** Sums over the histories of accounts that are not 0, a row a day. */
function sums(rows: readonly Partial<Record<DayAccount, number>>[]): Float64Array {
  return Float64Array.from(rows.flatMap((row) => dayAccounts.map((account) => row[account] ?? 0)));
}

const found = (value: number): MarginResult => ({ value, capped: false, refused: value + 1.01 });

describe('marginOf()', () => {
  it('has no limit, and says so, where it is capped', () => {
    const capped = { value: 3, capped: true, refused: Infinity };
    const simulation = { record: nothing, margin: capped, usual: capped, limit: null };
    expect(marginOf(simulation, network, stepsPerDay)).toEqual({
      ...{ value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true },
    });
  });

  it.each([
    { step: 0, day: 1 },
    { step: 23, day: 1 },
    { step: 24, day: 2 },
  ])('counts step $step of an hour as of day $day', ({ step, day }) => {
    const simulation = {
      ...{ record: nothing, margin: found(-0.2), usual: found(0.1), limit: { device: phone, step } },
    };
    expect(marginOf(simulation, network, stepsPerDay)).toMatchObject({
      ...{ value: -0.2, usual: 0.1, limitedBy: { device: 'Phone', day } },
    });
  });
});

describe('riskOf()', () => {
  it('counts the histories in which a must-have runs flat, in the very first step too', () => {
    const risk = riskOf({ ...nothing, flatStep: Int32Array.of(-1, 0, 70, -1) });
    expect(risk.share).toBe(0.5);
    expect(risk.low).toBeGreaterThan(0);
    expect(risk.high).toBeLessThan(1);
  });

  it('knows of none that the truth may be above none', () => {
    expect(riskOf(nothing)).toMatchObject({ share: 0, low: 0 });
    expect(riskOf(nothing).high).toBeGreaterThan(0);
  });
});

describe('riskOnDays()', () => {
  // Three days of four histories: the second is flat on days 1 and 3, the third on day 2, the fourth on day 3.
  const flatOnDay = Uint8Array.of(0, 1, 0, 0, 0, 0, 1, 0, 0, 1, 0, 1);
  const onDays = (...days: readonly number[]) => riskOnDays({ ...nothing, flatOnDay }, days);

  it('counts the histories that are flat on one of the days, each once', () => {
    const shares = [onDays(0), onDays(1), onDays(2), onDays(0, 2), onDays(0, 1, 2)].map(({ share }) => share);
    expect(shares).toEqual([0.25, 0.25, 0.5, 0.5, 0.75]);
  });

  it('is none of no days, with an interval above it', () => {
    expect(onDays()).toMatchObject({ share: 0, low: 0 });
    expect(onDays().high).toBeGreaterThan(0);
  });

  it('is, over all legs of a tour, the risk of the tour, and on none of them greater', () => {
    fc.assert(
      fc.property(anyRun, ({ network: anyNetwork, course, legs, draws }) => {
        const scaled = [0.1, 0.4, 1, 2].map((factor) => ({
          ...draws,
          useScale: draws.useScale.map((scale) => scale * factor),
        }));
        const record = recordHistories(anyNetwork, course, scaled, 1, () => undefined);
        const whole = riskOf(record);
        expect(
          riskOnDays(
            record,
            Array.from({ length: course.days }, (_, day) => day),
          ),
        ).toEqual(whole);
        let first = 0;
        const ofLegs = legs.map(({ days }) => {
          const onLeg = Array.from({ length: days }, (_, day) => first + day);
          first += days;
          return riskOnDays(record, onLeg).share;
        });
        expect(Math.max(...ofLegs)).toBeLessThanOrEqual(whole.share);
        expect(ofLegs.some((share) => share > 0)).toBe(whole.share > 0);
      }),
    );
  });
});

describe('firstShortOf()', () => {
  it('is null where none runs flat', () => {
    expect(firstShortOf(nothing, network, stepsPerDay)).toBeNull();
  });

  it('names the device most often first, the middle day and the earliest', () => {
    const record = {
      ...{ ...nothing, histories: 5 },
      flatStep: Int32Array.of(-1, 30, 100, 10, 200),
      flatDevice: Int32Array.of(-1, phone, navigation, phone, phone),
    };
    // Flat on days 1, 2, 5 and 9; of the two in the middle the earlier.
    expect(firstShortOf(record, network, stepsPerDay)).toEqual({ device: 'Phone', day: 2, earliestDay: 1 });
  });
});

describe('reserveOf()', () => {
  it('spreads the least stored, and leaves the record as it was', () => {
    const lowestWh = Float64Array.of(50, 10, 40, 20, 30);
    const record = { ...nothing, histories: 5, lowestWh };
    // On straight lines between neighbours: 10 of 100 lie 0.4 of the way from the first to the second.
    expect(reserveOf(record)).toEqual({ p10: 14, p50: 30, p90: 46 });
    expect([...lowestWh]).toEqual([50, 10, 40, 20, 30]);
  });
});

describe('storedCourseOf()', () => {
  it('spreads each point over the histories, to hundredths of a Wh', () => {
    const record = {
      ...{ ...nothing, histories: 3, pointsPerDay: 2 },
      storedWh: Float32Array.of(5, 25, 15, 1.23456, 1.23456, 1.23456),
    };
    const course = storedCourseOf(record, network);
    expect(course).toMatchObject({ capacityWh: 30, pointsPerDay: 2 });
    expect(course.lowWh).toEqual([7, 1.23]);
    expect(course.middleWh).toEqual([15, 1.23]);
    expect(course.highWh).toEqual([23, 1.23]);
  });
});

describe('dayLedgersOf()', () => {
  const days = sums([
    { demand: 40, unserved: 8, wallDirect: 12, wallToBanks: 20, lost: 4, stored: -4 },
    { demand: 40, panel: 16, hub: 4, spilled: 2 },
  ]);

  it('gives means over the histories, day by day with its date', () => {
    const [first, second] = dayLedgersOf({ ...nothing, days }, '2028-02-29');
    expect(first).toMatchObject({ day: 1, date: '2028-02-29', demand: 10, unserved: 2, lost: 1, stored: -1 });
    expect(second).toMatchObject({ day: 2, date: '2028-03-01', panel: 4, hub: 1, spilled: 0.5 });
  });

  it('takes used for what was asked and served, and walls together', () => {
    const [first] = dayLedgersOf({ ...nothing, days }, '2028-02-29');
    expect(first).toMatchObject({ used: 8, wall: 8, wallToBanks: 5 });
    expect(first).not.toHaveProperty('wallDirect');
  });
});

describe('deviceLedgersOf()', () => {
  it('has none without devices', () => {
    const bare = compileNetwork({ devices: [], banks: [], chargers: [], rules: usualRules });
    expect(deviceLedgersOf(nothing, bare)).toEqual([]);
  });

  it('gives each device its own days, as means over the histories', () => {
    const dayCount = 2;
    const row = (day: number, index: number) =>
      deviceAccounts.map((_, account) => 4 * (100 * day + 10 * index + account));
    const devices = Float64Array.from(
      Array.from({ length: dayCount }, (_, day) => network.devices.flatMap((_, d) => row(day, d))).flat(),
    );
    const ledgers = deviceLedgersOf({ ...nothing, devices }, network);
    expect(ledgers.map(({ device: label, mustHave }) => [label, mustHave])).toEqual([
      ['Navigation', true],
      ['Phone', true],
      ['Camera', false],
    ]);
    expect(ledgers[phone]!.days).toMatchObject([
      { demand: 10, unserved: 11, wallDirect: 12, wallThroughBank: 13, panel: 14, hub: 15, start: 16 },
      { demand: 110, start: 116 },
    ]);
  });
});

describe('spilledShareOf()', () => {
  it('is 0 without panel and hub', () => {
    expect(spilledShareOf({ ...nothing, days: sums([{ demand: 5 }, { wallDirect: 3 }]) })).toBe(0);
  });

  it('is of what both gave on all days together', () => {
    const days = sums([
      { panel: 30, hub: 10, spilled: 0 },
      { panel: 60, spilled: 25 },
    ]);
    expectNear(spilledShareOf({ ...nothing, days }), 0.25, 1e-12, 'spilled share');
  });
});
