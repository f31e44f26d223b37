import { describe, expect, it } from 'vitest';
import { usualRules, type Rules } from '../../../../shared-types/scenario.ts';
import { compileNetwork, inServiceOrder, type KitModel } from '../../../../src-main/model/flow/network.ts';
import type { ChargerModel } from '../../../../src-main/model/storage/charger.ts';
import { bankOf, deviceOf, pd } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';

const bare: KitModel = { devices: [], banks: [], chargers: [], rules: usualRules };
const devices = [
  deviceOf({ key: 'b-nice', mustHave: false }),
  deviceOf({ key: 'z-must' }),
  deviceOf({ key: 'a-nice', mustHave: false }),
];
const small: ChargerModel = { key: 'small', outputs: [{ standard: 'bc-1.2', powerW: 5 }], totalW: 5 };
const large: ChargerModel = {
  key: 'large',
  outputs: [{ standard: 'bc-1.2', powerW: 7.5 }, pd(60), pd(20)],
  totalW: 65,
};
const keys = (items: readonly { readonly key: string }[]): string[] => items.map(({ key }) => key);

describe('compileNetwork()', () => {
  it('takes an empty kit', () => {
    expect(compileNetwork(bare)).toMatchObject({
      ...{ deviceCount: 0, bankCount: 0, sinkCount: 0, portCount: 0 },
      ...{ hasDirectLoads: false, hasPluggedDraw: false },
    });
  });

  it('gives the same network whatever the order of the lists', () => {
    const twin = { ...small, key: 'twin', outputs: [pd(5)] };
    const banks = [bankOf({ key: 'b' }), bankOf()];
    const kit = { ...bare, devices, banks, chargers: [small, large, twin] };
    const turned = {
      ...kit,
      devices: kit.devices.toReversed(),
      banks: kit.banks.toReversed(),
      chargers: kit.chargers.toReversed(),
    };
    expect(compileNetwork(turned)).toEqual(compileNetwork(kit));
  });

  it('serves must-haves before nice-to-haves, equals by key', () => {
    expect(keys(compileNetwork({ ...bare, devices }).devices)).toEqual(['z-must', 'a-nice', 'b-nice']);
    expect(keys(inServiceOrder(devices))).toEqual(['z-must', 'a-nice', 'b-nice']);
  });

  it('says what kind of devices there are', () => {
    expect(compileNetwork({ ...bare, devices: [deviceOf({ capacityWh: 0 })] }).hasDirectLoads).toBe(true);
    expect(compileNetwork({ ...bare, devices: [deviceOf({ pluggedW: 1 })] }).hasPluggedDraw).toBe(true);
  });

  it('takes the rules over', () => {
    expect(compileNetwork(bare)).toMatchObject({
      ...{ banksFirst: false, feedsDevices: false, banksOnlyAtPost: false, rations: true },
    });
    const rules: Rules = {
      atWall: 'banks-first',
      unsteadySource: 'device-too',
      atPost: 'banks-only',
      whenShort: 'serve-all',
      cellsSleep: 'tent',
    };
    expect(compileNetwork({ ...bare, rules })).toMatchObject({
      ...{ banksFirst: true, feedsDevices: true, banksOnlyAtPost: true, rations: false },
    });
  });
});

describe('stores of a network', () => {
  it('are full, for a wall, at 98 per cent', () => {
    // Where a charge falls to a tenth of C (Kollmeyer 2018, doi 10.17632/wykht8y7tg.1).
    const { fullWh } = compileNetwork({ ...bare, devices: [deviceOf()], banks: [bankOf()] });
    expectNear(fullWh[0]!, 19.6, 1e-9, 'device, Wh');
    expectNear(fullWh[1]!, 39.2, 1e-9, 'bank, Wh');
  });

  // Common practice, no source: a device is low once a tenth is missing, or what it stores in ten minutes.
  it.each([
    { capacityWh: 60, lowWh: 60 - 8 / 6 },
    { capacityWh: 5, lowWh: 4.5 },
  ])('are low below $lowWh of $capacityWh Wh at 8 W into the cells', ({ capacityWh, lowWh }) => {
    const network = compileNetwork({ ...bare, devices: [deviceOf({ capacityWh })] });
    expectNear(network.lowWh[0]!, lowWh, 1e-9, 'low, Wh');
  });

  it('taper over the room of one battery', () => {
    const spares = deviceOf({ capacityWh: 30, batteryWh: 10 });
    const { taperRoomWh } = compileNetwork({ ...bare, devices: [spares], banks: [bankOf()] });
    expectNear(taperRoomWh[0]!, 2, 1e-9, 'device with two spares, Wh');
    expectNear(taperRoomWh[1]!, 8, 1e-9, 'bank, Wh');
  });

  it('take what port and cable let through', () => {
    const thin = deviceOf({ input: { standard: 'pd', powerW: 30, cable: 'a-plug' } });
    expectNear(compileNetwork({ ...bare, devices: [thin] }).limitW[0]!, 15, 1e-9, 'limit, W');
  });
});

describe('banks of a network', () => {
  it('are filled largest first, equals by key', () => {
    const banks = [bankOf({ key: 'c', capacityWh: 20 }), bankOf({ key: 'b' }), bankOf({ key: 'a' })];
    expect(keys(compileNetwork({ ...bare, banks }).banks)).toEqual(['a', 'b', 'c']);
  });

  it('serve a device in the opposite order, unless one has the stronger link', () => {
    const banks = [
      bankOf({ key: 'strong', capacityWh: 50 }),
      bankOf({ key: 'weak', capacityWh: 40, outputs: [pd(5)] }),
      bankOf({ key: 'last', capacityWh: 30 }),
    ];
    const { serveOrder, serveLinkW } = compileNetwork({ ...bare, devices: [deviceOf()], banks });
    expect([...serveOrder].map((b) => banks[b]!.key)).toEqual(['last', 'strong', 'weak']);
    expect([...serveLinkW]).toEqual([10, 5, 10]);
  });

  it('serve through the best of their outlets', () => {
    const banks = [bankOf({ outputs: [{ standard: 'usb-2', powerW: 2.5 }, pd(8)] })];
    expect([...compileNetwork({ ...bare, devices: [deviceOf()], banks }).serveLinkW]).toEqual([8]);
  });

  it('pass on to a must-have at least what the worst bank and the worst must-have leave', () => {
    const banks = [bankOf({ efficiencyOut: 0.9 }), bankOf({ key: 'worse', efficiencyOut: 0.7 })];
    const worseNice = deviceOf({ key: 'nice', mustHave: false, efficiencyIn: 0.1 });
    const { bankToMustHave } = compileNetwork({ ...bare, devices: [deviceOf(), worseNice], banks });
    expectNear(bankToMustHave, 0.7 * 0.8, 1e-9, 'share');
  });
});

describe('chargers of a network', () => {
  const hungry = deviceOf({ input: pd(18) });
  const kit = { ...bare, devices: [hungry], chargers: [small, large] };

  it('are plugged in strongest first', () => {
    expect([...compileNetwork(kit).chargerTotalW]).toEqual([65, 5]);
  });

  it('give no more than all their ports together, each within its standard', () => {
    // 5 V 0.5 A is 2.5 W, whatever is printed beside the port.
    const boastful = { key: 'b', outputs: [pd(18), { standard: 'usb-2', powerW: 12 }], totalW: 65 } as const;
    expect([...compileNetwork({ ...bare, chargers: [boastful] }).chargerTotalW]).toEqual([20.5]);
  });

  it('offer a sink the strongest link first, and among equals the weaker port', () => {
    const { portOrder, wallLinkW, portCharger } = compileNetwork(kit);
    expect([...wallLinkW]).toEqual([7.5, 18, 18, 5]);
    expect([...portOrder]).toEqual([2, 1, 0, 3]);
    expect([...portCharger]).toEqual([0, 0, 0, 1]);
  });
});
