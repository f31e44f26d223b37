import { describe, expect, it } from 'vitest';
import { orderByNeed } from '../../../../../src-main/model/flow/rules/order-by-need.ts';
import type { DeviceModel } from '../../../../../src-main/model/storage/device.ts';
import { deviceOf, startHour } from '../../../../support/flow-step.ts';

const device = (key: string, mustHave: boolean, watts: number): DeviceModel =>
  deviceOf({ key, mustHave, useW: [watts, watts, watts, watts] });

/** Keys in the order of need with the energy given by key. */
function order(devices: readonly DeviceModel[], storedWh: Readonly<Record<string, number>>): string[] {
  const { network, state } = startHour({ devices }, []);
  network.devices.forEach(({ key }, index) => (state.storedWh[index] = storedWh[key] ?? 0));
  orderByNeed(network, state);
  return Array.from(state.order, (index) => network.devices[index]!.key);
}

describe('orderByNeed()', () => {
  it('takes no device at all', () => {
    expect(order([], {})).toEqual([]);
  });

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

  it('keeps equals in the order of their keys', () => {
    expect(order([device('b', true, 1), device('a', true, 1)], { a: 5, b: 5 })).toEqual(['a', 'b']);
  });

  it('puts equals back in the order of their keys, whatever it was before', () => {
    const { network, state } = startHour({ devices: [device('a', true, 1), device('b', true, 1)] }, [5, 5]);
    state.order.set([1, 0]);
    orderByNeed(network, state);
    expect([...state.order]).toEqual([0, 1]);
  });

  it('puts many devices in order', () => {
    const devices = ['a', 'b', 'c', 'd', 'e'].map((key) => device(key, key !== 'c', 1));
    expect(order(devices, { a: 5, b: 3, c: 0, d: 4, e: 1 })).toEqual(['e', 'b', 'd', 'a', 'c']);
  });
});
