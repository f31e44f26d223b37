import { describe, expect, it } from 'vitest';
import { orderByNeed } from '../../../../../src-main/model/flow/rules/order-by-need.ts';
import { serveFromBanks } from '../../../../../src-main/model/flow/rules/serve-from-banks.ts';
import type { BankModel } from '../../../../../src-main/model/storage/bank.ts';
import type { DeviceModel } from '../../../../../src-main/model/storage/device.ts';
import { bankOf, deviceOf, pd, startHour, type HourAround } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

interface Served {
  readonly devices: readonly DeviceModel[];
  readonly banks: readonly BankModel[];
  readonly storedWh: readonly number[];
  readonly deficitWh?: readonly number[];
  readonly topUp?: boolean;
  readonly around?: Partial<HourAround>;
}

function serve({ devices, banks, storedWh, deficitWh = [], topUp = true, around = {} }: Served) {
  const { network, course, state } = startHour({ devices, banks }, storedWh, around);
  state.deficitWh.set(deficitWh);
  orderByNeed(network, state);
  serveFromBanks(network, course, state, 0, topUp);
  return state;
}

const must = deviceOf();
const nice = deviceOf({ key: 'nice', mustHave: false });

describe('serveFromBanks()', () => {
  it('gives nothing from an empty bank or to a full device', () => {
    expect([...serve({ devices: [must], banks: [bankOf()], storedWh: [3, 0] }).storedWh]).toEqual([3, 0]);
    expect([...serve({ devices: [must], banks: [bankOf()], storedWh: [20, 9] }).storedWh]).toEqual([20, 9]);
  });

  it('gives no more than the bank holds, less its loss', () => {
    const { storedWh, servedWh } = serve({ devices: [must], banks: [bankOf()], storedWh: [0, 4] });
    expectNear(servedWh[0]!, 4 * 0.5, 1e-9, 'at the plug, Wh');
    expectNear(storedWh[0]!, 4 * 0.5 * 0.8, 1e-9, 'device, Wh');
    expectNear(storedWh[1]!, 0, 1e-12, 'bank, Wh');
  });

  it('gives no more than the cold leaves in reach', () => {
    // A tenth of 40 Wh stays in the cells.
    const around = { unreachableShare: 0.1 };
    const { storedWh } = serve({ devices: [must], banks: [bankOf()], storedWh: [0, 5], around });
    expectNear(storedWh[0]!, 1 * 0.5 * 0.8, 1e-9, 'device, Wh');
    expectNear(storedWh[1]!, 4, 1e-9, 'bank, Wh');
  });

  it('covers only a deficit on the way', () => {
    const { storedWh, deficitWh } = serve({
      ...{ devices: [must], banks: [bankOf()], storedWh: [0, 40], deficitWh: [1], topUp: false },
    });
    expect([storedWh[0], deficitWh[0]]).toEqual([0, 0]);
    expectNear(storedWh[1]!, 40 - 1 / 0.8 / 0.5, 1e-9, 'bank, Wh');
  });

  it('does not plug in a device that lacks a few minutes', () => {
    expect(serve({ devices: [must], banks: [bankOf()], storedWh: [19, 40] }).storedWh[1]).toBe(40);
  });
});

describe('serveFromBanks() to several devices', () => {
  it('serves a must-have before a nice-to-have from a nearly empty bank', () => {
    const { storedWh } = serve({ devices: [nice, must], banks: [bankOf()], storedWh: [0, 0, 2] });
    expectNear(storedWh[0]!, 2 * 0.4, 1e-9, 'must-have, Wh');
    expect(storedWh[1]).toBe(0);
  });

  it.each([
    { mustWh: 19.5, niceIsFilled: true },
    { mustWh: 10, niceIsFilled: false },
  ])('fills a nice-to-have once no must-have is low: must-have at $mustWh Wh', ({ mustWh, niceIsFilled }) => {
    const twoOutlets = bankOf({ outputs: [pd(10), pd(10)], capacityWh: 400 });
    const { storedWh } = serve({ devices: [must, nice], banks: [twoOutlets], storedWh: [mustWh, 0, 400] });
    expect(storedWh[1]! > 0).toBe(niceIsFilled);
  });

  it('lets as many devices charge at once as there are outlets', () => {
    const devices = [deviceOf({ key: 'a' }), deviceOf({ key: 'b' })];
    const charged = (outputs: BankModel['outputs']): number => {
      const banks = [bankOf({ outputs, capacityWh: 400, chargesWhileServing: true })];
      const { storedWh } = serve({ devices, banks, storedWh: [0, 0, 400] });
      return storedWh[0]! + storedWh[1]!;
    };
    expectNear(charged([pd(10)]), 8, 1e-9, 'through one outlet, Wh');
    expectNear(charged([pd(10), pd(10)]), 16, 1e-9, 'through two, Wh');
  });

  it('fills the neediest must-have alone while the banks fall short', () => {
    const slow = deviceOf({ key: 'slow', input: pd(2) });
    const banks = [bankOf({ outputs: [pd(10), pd(10)] })];
    const { storedWh } = serve({ devices: [slow, deviceOf({ key: 'fast' })], banks, storedWh: [15, 4, 10] });
    expect(storedWh[0]).toBe(15);
    expectNear(storedWh[1]!, 4 + 2 * 0.8, 1e-9, 'the neediest, Wh');
  });
});

describe('serveFromBanks() from several banks', () => {
  const banks = [bankOf({ key: 'a' }), bankOf({ key: 'b' })];

  it('takes from the bank that is filled last, and leaves the other', () => {
    const { storedWh } = serve({ devices: [must], banks, storedWh: [0, 40, 40] });
    expect(storedWh[1]).toBe(40);
    expectNear(storedWh[2]!, 40 - 10 / 0.5, 1e-9, 'second bank, Wh');
  });

  it('goes on with the other when one is empty', () => {
    const { servedWh } = serve({ devices: [must], banks, storedWh: [0, 40, 6] });
    expectNear(servedWh[1]!, 3, 1e-9, 'from the second, Wh');
    expectNear(servedWh[0]!, 7, 1e-9, 'from the first, Wh');
  });

  it('takes the stronger link first', () => {
    const strong = bankOf({ key: 'a', outputs: [pd(10)] });
    const weak = bankOf({ key: 'b', outputs: [pd(5)] });
    expect(serve({ devices: [must], banks: [strong, weak], storedWh: [0, 40, 40] }).servedWh[1]).toBe(0);
  });
});

describe('serveFromBanks() and banks that can’t do both', () => {
  it('waits while all the time goes into charging', () => {
    for (const chargesWhileServing of [false, true]) {
      const kit = { devices: [must], banks: [bankOf({ chargesWhileServing })] };
      const { network, course, state } = startHour(kit, [0, 40]);
      state.turnHours[0] = 0;
      serveFromBanks(network, course, state, 0, true);
      expect(state.servedWh[0]! > 0).toBe(chargesWhileServing);
    }
  });

  it('leaves charging the time it did not serve', () => {
    // 2 Wh are given in a fifth of an hour.
    const { turnHours } = serve({ devices: [must], banks: [bankOf()], storedWh: [0, 4] });
    expectNear(turnHours[0]!, 0.8, 1e-9, 'time left, h');
  });
});

describe('serveFromBanks() with rationing', () => {
  const rich = { devices: [must, nice], banks: [bankOf()], storedWh: [20, 0, 37] };
  it('gives nice-to-haves what the must-haves can spare', () => {
    // 20 + 37 x 0.4 - 32.8 = 2 Wh at the plug.
    const { storedWh } = serve({ ...rich, around: { reserveWh: 32.8 } });
    expectNear(storedWh[1]!, 2 * 0.8, 1e-9, 'nice-to-have, Wh');
  });
  it('gives them nothing when there is nothing to spare', () => {
    expect(serve({ ...rich, around: { reserveWh: 60 } }).storedWh[1]).toBe(0);
  });
  it('gives them what stands at the brim', () => {
    // 1 Wh above 38, of which half comes out.
    const brimful = { ...rich, storedWh: [20, 0, 39], around: { reserveWh: 60 } };
    expectNear(serve(brimful).storedWh[1]!, 0.5 * 0.8, 1e-9, 'nice-to-have, Wh');
  });
  it('holds nothing back from must-haves', () => {
    const poor = { ...rich, storedWh: [0, 20, 30], around: { reserveWh: 60 } };
    expectNear(serve(poor).storedWh[0]!, 8, 1e-9, 'must-have, Wh');
  });
  it('serves all, if the rider says so', () => {
    const around = { reserveWh: 60, rules: { whenShort: 'serve-all' } } as const;
    expectNear(serve({ ...rich, around }).storedWh[1]!, 8, 1e-9, 'nice-to-have, Wh');
  });
});
