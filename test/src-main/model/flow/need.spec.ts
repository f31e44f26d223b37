import { describe, expect, it } from 'vitest';
import { orderByNeed } from '../../../../src-main/model/flow/need.ts';
import { compileNetwork } from '../../../../src-main/model/flow/network.ts';
import { createState } from '../../../../src-main/model/flow/step-state.ts';
import type { DeviceModel } from '../../../../src-main/model/storage/device.ts';

const device = (key: string, mustHave: boolean, watts: number): DeviceModel => ({
  label: key,
  key,
  mustHave,
  capacityWh: 10,
  input: { standard: 'pd', powerW: 10 },
  efficiencyIn: 1,
  useW: [watts, watts, watts, watts],
});

/** Keys in the order of need with the energy given by key. */
function order(devices: readonly DeviceModel[], storedWh: Readonly<Record<string, number>>): string[] {
  const network = compileNetwork({
    devices,
    banks: [],
    chargers: [],
    wallOrder: 'devices-first',
    unsteadyFeed: 'bank-only',
  });
  const state = createState(network);
  network.devices.forEach(({ key }, index) => (state.storedWh[index] = storedWh[key] ?? 0));
  orderByNeed(network, state);
  return Array.from(state.order, (index) => network.devices[index]!.key);
}

describe('orderByNeed()', () => {
  it('puts a must-have before a nice-to-have that is nearly empty', () => {
    expect(order([device('a', false, 1), device('b', true, 1)], { a: 0.1, b: 9 })).toEqual(['b', 'a']);
  });

  it('puts the must-have first whose battery lasts least long', () => {
    const both = [device('a', true, 1), device('b', true, 4)];
    expect(order(both, { a: 2, b: 6 })).toEqual(['b', 'a']);
    expect(order(both, { a: 1, b: 6 })).toEqual(['a', 'b']);
  });

  it('puts a device without use last among its equals', () => {
    expect(order([device('a', true, 0), device('b', true, 1)], { a: 0.5, b: 9 })).toEqual(['b', 'a']);
  });

  it('takes no device at all', () => {
    expect(order([], {})).toEqual([]);
  });
});
