import { describe, expect, it } from 'vitest';
import { compileNetwork, type KitModel } from '../../../../src-main/model/flow/network.ts';
import type { DeviceModel } from '../../../../src-main/model/storage/device.ts';

const device = (key: string, mustHave: boolean): DeviceModel => ({
  label: key,
  key,
  mustHave,
  capacityWh: 10,
  input: { standard: 'pd', powerW: 18 },
  efficiencyIn: 0.9,
  useW: [0, 1, 2, 3],
});
const kit: KitModel = {
  devices: [device('b-nice', false), device('z-must', true), device('a-nice', false)],
  banks: [],
  chargers: [
    { key: 'small', outputs: [{ standard: 'bc-1.2', powerW: 5 }], totalW: 5 },
    {
      key: 'large',
      outputs: [
        { standard: 'bc-1.2', powerW: 7.5 },
        { standard: 'pd', powerW: 60 },
        { standard: 'pd', powerW: 20 },
      ],
      totalW: 65,
    },
  ],
  wallOrder: 'devices-first',
  unsteadyFeed: 'bank-only',
};

describe('compileNetwork()', () => {
  it('takes an empty kit', () => {
    const network = compileNetwork({ ...kit, devices: [], chargers: [] });
    expect(network).toMatchObject({ deviceCount: 0, bankCount: 0, portCount: 0 });
  });

  it('serves must-haves before nice-to-haves, equals by key', () => {
    expect(compileNetwork(kit).devices.map(({ key }) => key)).toEqual(['z-must', 'a-nice', 'b-nice']);
  });

  it('plugs the stronger charger in first', () => {
    expect([...compileNetwork(kit).chargerTotalW]).toEqual([65, 5]);
  });

  it('sends a sink to the strongest link, and leaves the stronger port free', () => {
    const { portOrder, wallLinkW } = compileNetwork(kit);
    expect([...portOrder.subarray(0, 4)]).toEqual([2, 1, 0, 3]);
    expect([...wallLinkW.subarray(0, 4)]).toEqual([7.5, 18, 18, 5]);
  });

  it('turns the order at a wall when banks come first', () => {
    const bank = {
      label: 'bank',
      key: 'bank',
      capacityWh: 37,
      input: { standard: 'pd', powerW: 18 },
      outputs: [{ standard: 'pd', powerW: 18 }],
      efficiencyIn: 0.9,
      efficiencyOut: 0.9,
      chargesWhileServing: true,
      standbyW: 0,
      selfDischargePerHour: 0,
    } as const;
    const both = { ...kit, devices: kit.devices.slice(0, 1), banks: [bank] };
    expect(compileNetwork(both).banksFirst).toBe(false);
    expect(compileNetwork({ ...both, wallOrder: 'banks-first' }).banksFirst).toBe(true);
  });
});
