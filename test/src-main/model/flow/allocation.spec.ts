import { describe, expect, it } from 'vitest';
import {
  bankLosses,
  chargeAtWall,
  feedDevices,
  fillBuffers,
  serveFromBanks,
  useOwnBatteries,
} from '../../../../src-main/model/flow/allocation.ts';
import { account } from '../../../../src-main/model/flow/ledger.ts';
import { orderByNeed } from '../../../../src-main/model/flow/need.ts';
import { compileNetwork, type KitModel } from '../../../../src-main/model/flow/network.ts';
import { beginStep, createState } from '../../../../src-main/model/flow/step-state.ts';
import type { BankModel } from '../../../../src-main/model/storage/bank.ts';
import type { DeviceModel } from '../../../../src-main/model/storage/device.ts';
import { expectNear } from '../../../support/near.ts';

const device = (changes: Partial<DeviceModel> = {}): DeviceModel => ({
  label: 'Device',
  key: 'device',
  mustHave: true,
  capacityWh: 20,
  input: { standard: 'pd', powerW: 10 },
  efficiencyIn: 0.8,
  useW: [1, 1, 1, 1],
  ...changes,
});
const bank = (changes: Partial<BankModel> = {}): BankModel => ({
  label: 'Bank',
  key: 'bank',
  capacityWh: 40,
  input: { standard: 'pd', powerW: 10 },
  outputs: [{ standard: 'pd', powerW: 10 }],
  efficiencyIn: 0.9,
  efficiencyOut: 0.5,
  chargesWhileServing: false,
  standbyW: 0,
  selfDischargePerHour: 0,
  ...changes,
});
const charger = (powerW: number, totalW = powerW) => ({
  key: `${powerW}`,
  outputs: [{ standard: 'pd', powerW } as const],
  totalW,
});

const port = { standard: 'pd', powerW: 10 } as const;

/** A whole step of riding. */
const riding = Float64Array.of(0, 0, 1, 0);

/** A kit at the start of an hour with the stores given, in order of sinks. */
function hour(kit: Partial<KitModel>, storedWh: readonly number[]) {
  const network = compileNetwork({
    devices: [],
    banks: [],
    chargers: [],
    wallOrder: 'devices-first',
    unsteadyFeed: 'bank-only',
    ...kit,
  });
  const state = createState(network);
  state.storedWh.set(storedWh);
  beginStep(network, state, 1);
  return { network, state };
}

describe('useOwnBatteries()', () => {
  it('leaves as deficit what the battery does not hold', () => {
    const { network, state } = hour({ devices: [device()] }, [0.6]);
    useOwnBatteries(network, state, riding, 0, 2, 1);
    expectNear(state.deficitWh[0]!, 1.4, 1e-12, 'deficit, Wh');
    expect(state.storedWh[0]).toBe(0);
    expectNear(state.row[account.demand]!, 2, 1e-12, 'demand, Wh');
  });
});

describe('chargeAtWall()', () => {
  it('does nothing without an outlet or without a charger', () => {
    const { network, state } = hour({ devices: [device()], chargers: [charger(10)] }, [5]);
    chargeAtWall(network, state, 0, 1, 1);
    expect(state.storedWh[0]).toBe(5);
    const bare = hour({ devices: [device()] }, [5]);
    chargeAtWall(bare.network, bare.state, 2, 1, 1);
    expect(bare.state.storedWh[0]).toBe(5);
  });

  it('charges for the share of the time the outlet is there', () => {
    const { network, state } = hour({ devices: [device()], chargers: [charger(10)] }, [0]);
    chargeAtWall(network, state, 1, 0.25, 1);
    expectNear(state.storedWh[0]!, 2, 1e-9, 'stored, Wh');
    expectNear(state.row[account.wall]!, 2.5, 1e-9, 'wall, Wh');
  });

  it('plugs in no more chargers than there are outlets', () => {
    const kit = { devices: [device()], banks: [bank()], chargers: [charger(10), charger(9)] };
    const one = hour(kit, [0, 0]);
    chargeAtWall(one.network, one.state, 1, 1, 1);
    expectNear(one.state.row[account.wall]!, 10, 1e-9, 'wall with one outlet, Wh');
    const two = hour(kit, [0, 0]);
    chargeAtWall(two.network, two.state, 2, 1, 1);
    expectNear(two.state.row[account.wall]!, 19, 1e-9, 'wall with two outlets, Wh');
  });

  it('shares a charger’s total power between its ports', () => {
    const twoPorts = {
      key: 'two',
      outputs: [
        { standard: 'pd', powerW: 10 },
        { standard: 'pd', powerW: 10 },
      ],
      totalW: 12,
    } as const;
    const { network, state } = hour({ devices: [device()], banks: [bank()], chargers: [twoPorts] }, [0, 0]);
    chargeAtWall(network, state, 1, 1, 1);
    expectNear(state.row[account.wall]!, 12, 1e-9, 'wall, Wh');
    expectNear(state.storedWh[0]!, 8, 1e-9, 'device first, Wh');
    expectNear(state.storedWh[1]!, 1.8, 1e-9, 'bank with the rest, Wh');
  });

  it('passes the port on within the step once a device is full', () => {
    const full = hour({ devices: [device()], banks: [bank()], chargers: [charger(10)] }, [20, 0]);
    chargeAtWall(full.network, full.state, 1, 1, 1);
    expectNear(full.state.storedWh[1]!, 9, 1e-9, 'bank, Wh');
  });
});

describe('feedDevices()', () => {
  it('leaves devices with a battery alone by default', () => {
    const { network, state } = hour({ devices: [device()] }, [0]);
    expect(feedDevices(network, state, 4, 2, 1)).toBe(6);
  });
  it('runs a load without battery from the hub, not from the panel', () => {
    const { network, state } = hour({ devices: [device({ capacityWh: 0, efficiencyIn: 1 })] }, [0]);
    useOwnBatteries(network, state, riding, 0, 3, 1);
    expectNear(feedDevices(network, state, 4, 2, 1), 4, 1e-9, 'left, Wh');
    expectNear(state.deficitWh[0]!, 1, 1e-9, 'deficit, Wh');
  });
  it('plugs a device into the stronger of panel and hub when the rule says so', () => {
    const { network, state } = hour({ devices: [device()], unsteadyFeed: 'device-too' }, [0]);
    expectNear(feedDevices(network, state, 4, 2, 1), 2, 1e-9, 'left, Wh');
    expectNear(state.storedWh[0]!, 4 * 0.8, 1e-9, 'stored, Wh');
  });
});

describe('serveFromBanks()', () => {
  it('gives no more than the bank holds, less its loss', () => {
    const { network, state } = hour({ devices: [device()], banks: [bank()] }, [0, 4]);
    serveFromBanks(network, state, true);
    expectNear(state.storedWh[0]!, 4 * 0.5 * 0.8, 1e-9, 'device, Wh');
    expectNear(state.storedWh[1]!, 0, 1e-12, 'bank, Wh');
  });
  it('covers only a deficit when it may not top up', () => {
    const { network, state } = hour({ devices: [device()], banks: [bank()] }, [0, 40]);
    useOwnBatteries(network, state, riding, 0, 1, 1);
    serveFromBanks(network, state, false);
    expect(state.storedWh[0]).toBe(0);
    expectNear(state.storedWh[1]!, 40 - 1 / 0.8 / 0.5, 1e-9, 'bank, Wh');
  });
  it('serves a must-have before a nice-to-have from a nearly empty bank', () => {
    const kit = { devices: [device({ key: 'a', mustHave: false }), device({ key: 'z' })], banks: [bank()] };
    const { network, state } = hour(kit, [0, 0, 2]);
    serveFromBanks(network, state, true);
    expect(state.storedWh[0]).toBeGreaterThan(0);
    expect(state.storedWh[1]).toBe(0);
  });
  it('fills a nice-to-have once every must-have is nearly full', () => {
    const kit = { devices: [device({ key: 'a', mustHave: false }), device({ key: 'z' })], banks: [bank()] };
    const nearly = hour(kit, [19.5, 0, 40]);
    serveFromBanks(nearly.network, nearly.state, true);
    expect(nearly.state.storedWh[1]).toBeGreaterThan(0);
    const half = hour(kit, [10, 0, 40]);
    serveFromBanks(half.network, half.state, true);
    expect(half.state.storedWh[1]).toBe(0);
  });
  it('fills the neediest must-have alone while the banks fall short', () => {
    const slow = device({ key: 'slow', input: { standard: 'pd', powerW: 2 } });
    const kit = { devices: [slow, device({ key: 'fast' })], banks: [bank({ outputs: [port, port] })] };
    const { network, state } = hour(kit, [15, 4, 10]);
    orderByNeed(network, state);
    expect(network.devices[state.order[0]!]!.key).toBe('slow');
    serveFromBanks(network, state, true);
    const [fast, needy] = state.storedWh;
    expect(fast).toBe(15);
    expectNear(needy!, 4 + 2 * 0.8, 1e-9, 'the neediest, Wh');
  });
  it('waits while a bank that can’t do both is charged', () => {
    const kit = {
      devices: [device()],
      banks: [bank()],
      chargers: [charger(10)],
      wallOrder: 'banks-first',
    } as const;
    const { network, state } = hour(kit, [0, 10]);
    chargeAtWall(network, state, 1, 1, 1);
    serveFromBanks(network, state, true);
    expect(state.gaveCharge[0]).toBe(0);
  });
});

describe('fillBuffers()', () => {
  it('spills what finds no room or comes faster than the input', () => {
    const { network, state } = hour({ banks: [bank()] }, [0]);
    fillBuffers(network, state, 16, 1);
    expectNear(state.storedWh[0]!, 9, 1e-9, 'bank, Wh');
    expectNear(state.row[account.spilled]!, 6, 1e-9, 'spilled, Wh');
  });
  it('goes round a bank that is serving and can’t do both', () => {
    const kit = { devices: [device()], banks: [bank({ key: 'a' }), bank({ key: 'b' })] };
    const { network, state } = hour(kit, [19, 20, 0]);
    serveFromBanks(network, state, true);
    fillBuffers(network, state, 5, 1);
    expect(state.storedWh[1]).toBeLessThan(20);
    expectNear(state.storedWh[2]!, 4.5, 1e-9, 'second bank, Wh');
  });
});

describe('bankLosses()', () => {
  it('draws standby only while serving, and self-discharge always', () => {
    const idle = hour({ banks: [bank({ standbyW: 1, selfDischargePerHour: 0.01 })] }, [10]);
    bankLosses(idle.network, idle.state, 1);
    expectNear(idle.state.storedWh[0]!, 9.9, 1e-9, 'idle, Wh');
    const serving = hour({ devices: [device()], banks: [bank({ standbyW: 1, efficiencyOut: 1 })] }, [19, 10]);
    serveFromBanks(serving.network, serving.state, true);
    const before = serving.state.storedWh[1]!;
    bankLosses(serving.network, serving.state, 1);
    expectNear(serving.state.storedWh[1]!, before - 1, 1e-9, 'serving, Wh');
  });
  it('never takes a bank below empty', () => {
    const { network, state } = hour({ devices: [device()], banks: [bank({ standbyW: 5 })] }, [0, 1]);
    serveFromBanks(network, state, true);
    bankLosses(network, state, 1);
    expect(state.storedWh[1]).toBe(0);
  });
});
