import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { account, accounts, imbalanceWh } from '../../../../src-main/model/flow/ledger.ts';
import { compileNetwork, type KitModel } from '../../../../src-main/model/flow/network.ts';
import { createRecord, runTour, type FlatMustHave } from '../../../../src-main/model/flow/run-tour.ts';
import { createState } from '../../../../src-main/model/flow/step-state.ts';
import type { Supply } from '../../../../src-main/model/flow/supply.ts';
import { buildTimeline, type Timeline } from '../../../../src-main/model/flow/timeline.ts';
import { expectNear } from '../../../support/near.ts';
import { anyRun, supplyFor } from '../../../support/random-flow.ts';

function run(kit: KitModel, timeline: Timeline, supply: Supply, factor = 1) {
  const network = compileNetwork(kit);
  const record = createRecord(timeline);
  const flat: FlatMustHave = { step: -1, device: -1 };
  const state = createState(network);
  runTour(network, timeline, supply, factor, state, flat, record);
  const total = (name: keyof typeof account): number =>
    Array.from(
      { length: timeline.days },
      (_, day) => record.ledger[day * accounts.length + account[name]]!,
    ).reduce((sum, wh) => sum + wh, 0);
  return { network, record, flat, state, total };
}

const phone = {
  label: 'Phone',
  key: 'phone',
  mustHave: true,
  capacityWh: 10,
  input: { standard: 'pd', powerW: 10 },
  efficiencyIn: 0.8,
  // In the evening and on the ride only: 4 + 6 Wh a day, and full at departure.
  useW: [0, 1, 1, 0],
} as const;
const bank = {
  label: 'Bank',
  key: 'bank',
  capacityWh: 40,
  input: { standard: 'pd', powerW: 18 },
  outputs: [{ standard: 'pd', powerW: 10 }],
  efficiencyIn: 0.9,
  efficiencyOut: 0.8,
  chargesWhileServing: true,
  standbyW: 0,
  selfDischargePerHour: 0,
} as const;
const charger = { key: 'charger', outputs: [{ standard: 'pd', powerW: 20 }], totalW: 20 } as const;
const rules = { wallOrder: 'devices-first', unsteadyFeed: 'bank-only' } as const;

const wild = (days: number): Timeline =>
  buildTimeline(
    [{ days, ridingHours: 6, stops: [], nightPattern: ['none'], wallOutlets: 1, postOutlets: 1 }],
    15,
  );

describe('runTour()', () => {
  it('accounts for every watt-hour of every day on any tour', () => {
    fc.assert(
      fc.property(anyRun, ({ kit, timeline, supply, factor }) => {
        const { record } = run(kit, timeline, supply, factor);
        for (let day = 0; day < timeline.days; day += 1) {
          const row = record.ledger.subarray(day * accounts.length, (day + 1) * accounts.length);
          const scale = row.reduce((sum, wh) => sum + Math.abs(wh), 1);
          expectNear(imbalanceWh(row), 0, 1e-9 * scale, `balance of day ${day + 1}, Wh`);
          expectNear(
            row[account.demand]!,
            row[account.used]! + row[account.unserved]!,
            1e-9 * scale,
            'demand',
          );
        }
      }),
    );
  });

  it('keeps every store between empty and full and no account negative', () => {
    fc.assert(
      fc.property(anyRun, ({ kit, timeline, supply, factor }) => {
        const { record, network, state } = run(kit, timeline, supply, factor);
        state.storedWh.forEach((wh, sink) => {
          expect(wh).toBeGreaterThanOrEqual(0);
          expect(wh).toBeLessThanOrEqual(network.capacityWh[sink]! + 1e-9);
        });
        record.ledger.forEach((wh, index) => {
          expect(Number.isFinite(wh)).toBe(true);
          if (index % accounts.length !== account.stored) expect(wh).toBeGreaterThanOrEqual(-1e-9);
        });
      }),
    );
  });

  it('gives the same result whatever the order of the items', () => {
    fc.assert(
      fc.property(anyRun, ({ kit, timeline, supply, factor }) => {
        const turned = {
          ...kit,
          devices: kit.devices.toReversed(),
          banks: kit.banks.toReversed(),
          chargers: kit.chargers.toReversed(),
        };
        const straight = run(kit, timeline, supply, factor);
        const reversed = run(turned, timeline, supply, factor);
        expect(reversed.record).toEqual(straight.record);
        expect(reversed.flat).toEqual(straight.flat);
      }),
    );
  });

  it('runs a device flat when its battery is used up away from any source', () => {
    // 10 Wh: 6 on the ride, then 4 from 18 h; all gone at 22 h of day 1, so flat when day 2 rides off at 8 h.
    const timeline = wild(2);
    const { flat, total } = run(
      { devices: [phone], banks: [], chargers: [charger], ...rules },
      timeline,
      supplyFor(timeline, 0, 0),
    );
    expect(flat).toEqual({ step: (24 + 8) * 4, device: 0 });
    expectNear(total('unserved'), 20 - 10, 1e-9, 'unserved, Wh');
  });

  it('lets one bank serve one device to the last watt-hour', () => {
    // Closed form: the bank's 40 Wh reach the device as 40 x 0.8 x 0.8 = 25.6 Wh, its own battery adds 10 Wh.
    const timeline = wild(5);
    const { total, state } = run(
      { devices: [phone], banks: [bank], chargers: [charger], ...rules },
      timeline,
      supplyFor(timeline, 0, 0),
    );
    expectNear(total('used'), 10 + 40 * 0.8 * 0.8, 1e-6, 'used, Wh');
    expect(Math.max(...state.storedWh)).toBeLessThan(1e-6);
  });

  it('draws 1/efficiency from a wall directly and more through a bank', () => {
    // Closed form: a night at a wall that makes good what the day used.
    const timeline = buildTimeline(
      [{ days: 1, ridingHours: 6, stops: [], nightPattern: ['wall'], wallOutlets: 1, postOutlets: 1 }],
      15,
    );
    const sip = { ...phone, useW: [0, 0, 0.5, 0] } as const;
    const supply = supplyFor(timeline, 0, 0);
    const direct = run({ devices: [sip], banks: [], chargers: [charger], ...rules }, timeline, supply);
    expectNear(direct.total('wall'), (6 * 0.5) / 0.8, 0.02, 'drawn, Wh');
    const small = { ...sip, capacityWh: 0.5, efficiencyIn: 1 };
    const lossless = { ...bank, efficiencyIn: 0.9, efficiencyOut: 0.8 };
    const through = run(
      { devices: [small], banks: [lossless], chargers: [charger], ...rules },
      timeline,
      supply,
    );
    expectNear(through.total('wall'), 0.5 + 2.5 / (0.9 * 0.8), 0.05, 'drawn through the bank, Wh');
  });

  it('spills what panel and hub offer beyond the room there is', () => {
    const timeline = wild(1);
    const { total } = run(
      { devices: [], banks: [], chargers: [], ...rules },
      timeline,
      supplyFor(timeline, 5, 3),
    );
    expectNear(total('spilled'), total('panel') + total('hub'), 1e-9, 'spilled, Wh');
    expectNear(total('hub'), 6 * 3, 1e-9, 'hub, Wh');
  });

  it('feeds no device from panel or hub unless the rule says so', () => {
    const timeline = wild(2);
    const supply = supplyFor(timeline, 5, 3);
    const kit = { devices: [phone], banks: [], chargers: [charger], wallOrder: 'devices-first' } as const;
    const apart = run({ ...kit, unsteadyFeed: 'bank-only' }, timeline, supply);
    const direct = run({ ...kit, unsteadyFeed: 'device-too' }, timeline, supply);
    expectNear(apart.total('spilled'), apart.total('panel') + apart.total('hub'), 1e-9, 'spilled, Wh');
    expect(direct.total('unserved')).toBeLessThan(apart.total('unserved'));
  });

  it('runs a lamp without battery from the hub alone', () => {
    const timeline = wild(1);
    const lamp = { ...phone, capacityWh: 0, efficiencyIn: 1, useW: [0, 0, 1, 0] } as const;
    const { total, flat } = run(
      { devices: [lamp], banks: [], chargers: [], ...rules },
      timeline,
      supplyFor(timeline, 0, 3),
    );
    expectNear(total('used'), 6, 1e-9, 'used, Wh');
    expect(flat.step).toBe(-1);
  });
});
