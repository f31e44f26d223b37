import { describe, expect, it } from 'vitest';
import {
  chargeBanksAtWall,
  chargeDevicesAtWall,
  feedShortAtWall,
  openPorts,
  plugsDevices,
} from '../../../../../src-main/model/flow/rules/charge-at-wall.ts';
import { orderByNeed } from '../../../../../src-main/model/flow/rules/order-by-need.ts';
import type { KitModel } from '../../../../../src-main/model/flow/network.ts';
import { from, type StepState } from '../../../../../src-main/model/flow/step-state.ts';
import {
  bankOf,
  chargerOf,
  deviceOf,
  pd,
  startHour,
  type HourAround,
} from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

/** A kit at a wall, its chargers plugged in. */
function atWall(
  kit: Partial<KitModel>,
  storedWh: readonly number[],
  { outlets = 1, hours = 1, ...around }: { readonly hours?: number } & Partial<HourAround> = {},
) {
  const hour = startHour(kit, storedWh, { outlets, ...around });
  orderByNeed(hour.network, hour.state);
  hour.state.wallHours[0] = hours;
  openPorts(hour.network, hour.state, outlets);
  return hour;
}

/** Must-haves, then nice-to-haves, then banks. */
function chargeAll({ network, state }: Pick<ReturnType<typeof atWall>, 'network' | 'state'>): StepState {
  chargeDevicesAtWall(network, state, 1);
  chargeDevicesAtWall(network, state, 0);
  chargeBanksAtWall(network, state);
  return state;
}

/** All that was drawn from the wall, Wh. */
const wallWh = ({ takenWh, storedWh }: StepState): number =>
  takenWh
    .subarray(from.wall * storedWh.length, (from.wall + 1) * storedWh.length)
    .reduce((sum, wh) => sum + wh, 0);

const both = { devices: [deviceOf()], banks: [bankOf()] };

describe('a wall', () => {
  it('charges nothing without an outlet or without a charger', () => {
    const noOutlet = chargeAll(atWall({ ...both, chargers: [chargerOf([10])] }, [5, 5], { outlets: 0 }));
    const noCharger = chargeAll(atWall(both, [5, 5], { outlets: 2 }));
    expect([wallWh(noOutlet), wallWh(noCharger)]).toEqual([0, 0]);
    expect([...noOutlet.storedWh, ...noCharger.storedWh]).toEqual([5, 5, 5, 5]);
  });

  it('charges for the part of the step in which the outlet is there', () => {
    const state = chargeAll(
      atWall({ devices: [deviceOf()], chargers: [chargerOf([10])] }, [0], { hours: 0.25 }),
    );
    expectNear(wallWh(state), 2.5, 1e-9, 'wall, Wh');
    expectNear(state.storedWh[0]!, 2, 1e-9, 'stored, Wh');
  });

  it.each([
    { outlets: 1, wh: 10 },
    { outlets: 2, wh: 19 },
  ])('has as many chargers plugged in as there are outlets: $outlets', ({ outlets, wh }) => {
    const kit = { ...both, chargers: [chargerOf([9]), chargerOf([10])] };
    expectNear(wallWh(chargeAll(atWall(kit, [0, 0], { outlets }))), wh, 1e-9, 'wall, Wh');
  });

  it('shares a charger’s total power between its ports', () => {
    const state = chargeAll(atWall({ ...both, chargers: [chargerOf([10, 10], 12)] }, [0, 0]));
    expectNear(state.storedWh[0]!, 8, 1e-9, 'device, Wh');
    expectNear(state.storedWh[1]!, 2 * 0.9, 1e-9, 'bank with the rest, Wh');
  });

  it('charges no sink through two ports at once', () => {
    const weak = { devices: [deviceOf()], chargers: [chargerOf([5, 5])] };
    expectNear(wallWh(chargeAll(atWall(weak, [0]))), 5, 1e-9, 'device, Wh');
    const bank = { banks: [bankOf({ chargesWhileServing: true })], chargers: [chargerOf([5, 5])] };
    expectNear(wallWh(chargeAll(atWall(bank, [0]))), 5, 1e-9, 'bank, Wh');
  });

  it('sends the next device to the port that is free', () => {
    const devices = [deviceOf({ key: 'a' }), deviceOf({ key: 'b' })];
    const state = chargeAll(atWall({ devices, chargers: [chargerOf([10, 5])] }, [0, 1]));
    expectNear(state.storedWh[0]!, 8, 1e-9, 'the neediest, at the strong port, Wh');
    expectNear(state.storedWh[1]!, 1 + 4, 1e-9, 'the other, Wh');
  });

  it('gives a port to one sink at a time, though its charger has more', () => {
    // The first takes 4 W of the strong port all hour; the other has the weak one.
    const devices = [deviceOf({ key: 'a', input: pd(4) }), deviceOf({ key: 'b' })];
    const state = chargeAll(atWall({ devices, chargers: [chargerOf([10, 2])] }, [0, 1]));
    expectNear(state.storedWh[0]!, 4 * 0.8, 1e-9, 'the first, Wh');
    expectNear(state.storedWh[1]!, 1 + 2 * 0.8, 1e-9, 'the other, Wh');
  });

  it('leaves alone what is as good as full', () => {
    expect(wallWh(chargeAll(atWall({ ...both, chargers: [chargerOf([10])] }, [19.9, 39.9])))).toBe(0);
  });

  it('passes on within the step what the taper of a device leaves of a port', () => {
    // From 18 of 20 Wh, 8 W into the cells and 4 Wh of room: an hour stores 2 (1 - exp(-2)) Wh; the bank has the rest of 10 Wh.
    const state = chargeAll(atWall({ ...both, chargers: [chargerOf([10])] }, [18, 0]));
    const deviceWh = (2 * (1 - Math.exp(-2))) / 0.8;
    expectNear(state.storedWh[1]!, (10 - deviceWh) * 0.9, 1e-9, 'bank, Wh');
  });

  it('charges no bank in the frost', () => {
    const kit = { banks: [bankOf()], chargers: [chargerOf([10])] };
    expect(wallWh(chargeAll(atWall(kit, [0], { charges: false })))).toBe(0);
  });
});

describe('chargeDevicesAtWall()', () => {
  it('charges devices in order of need, must-haves and nice-to-haves apart', () => {
    const devices = [deviceOf({ key: 'a' }), deviceOf({ key: 'b' }), deviceOf({ key: 'n', mustHave: false })];
    const { network, state } = atWall({ devices, chargers: [chargerOf([10])] }, [6, 3, 0]);
    chargeDevicesAtWall(network, state, 1);
    expect([state.storedWh[0], state.storedWh[2]]).toEqual([6, 0]);
    expectNear(state.storedWh[1]!, 11, 1e-9, 'the neediest must-have, Wh');
  });

  it('runs a load without battery, and no more', () => {
    const lamp = deviceOf({ capacityWh: 0 });
    const { network, state } = atWall({ devices: [lamp], chargers: [chargerOf([10])] }, [0]);
    state.deficitWh[0] = 2;
    chargeDevicesAtWall(network, state, 1);
    expectNear(wallWh(state), 2.5, 1e-9, 'wall, Wh');
    expect(state.deficitWh[0]).toBe(0);
  });
});

describe('feedShortAtWall()', () => {
  it('covers what is short, nice-to-haves too, and fills nothing', () => {
    const devices = [deviceOf(), deviceOf({ key: 'n', mustHave: false })];
    const { network, state } = atWall({ devices, chargers: [chargerOf([10])] }, [0, 0]);
    state.deficitWh.set([1.6, 0.8]);
    feedShortAtWall(network, state);
    expectNear(wallWh(state), 2 + 1, 1e-9, 'wall, Wh');
    expect([...state.storedWh, ...state.deficitWh]).toEqual([0, 0, 0, 0]);
  });
});

describe('chargeBanksAtWall()', () => {
  it('fills banks in order', () => {
    const banks = [bankOf({ key: 'small', capacityWh: 20 }), bankOf({ key: 'large' })];
    const { network, state } = atWall({ banks, chargers: [chargerOf([10])] }, [0, 0]);
    chargeBanksAtWall(network, state);
    expectNear(state.storedWh[0]!, 9, 1e-9, 'large, Wh');
    expect(state.storedWh[1]).toBe(0);
  });

  it('fills them side by side where there are ports', () => {
    const banks = [bankOf({ key: 'a' }), bankOf({ key: 'b', input: pd(5) })];
    const { network, state } = atWall({ banks, chargers: [chargerOf([10, 10])] }, [0, 0]);
    chargeBanksAtWall(network, state);
    expectNear(wallWh(state), 15, 1e-9, 'wall, Wh');
  });
});

describe('plugsDevices()', () => {
  it.each([
    { atPost: 'devices-too', isPost: true, plugged: true },
    { atPost: 'banks-only', isPost: true, plugged: false },
    { atPost: 'banks-only', isPost: false, plugged: true },
  ] as const)('is $plugged with $atPost; at a post: $isPost', ({ atPost, isPost, plugged }) => {
    const { network, course } = startHour({}, [], { rules: { atPost }, atPost: isPost });
    expect(plugsDevices(network, course, 0)).toBe(plugged);
  });
});
