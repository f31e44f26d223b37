import { describe, expect, it } from 'vitest';
import { fillBank, giveDevice, setLink } from '../../../../../src-main/model/flow/rules/give.ts';
import { link } from '../../../../../src-main/model/flow/step-state.ts';
import type { BankModel } from '../../../../../src-main/model/storage/bank.ts';
import type { DeviceModel } from '../../../../../src-main/model/storage/device.ts';
import { bankOf, deviceOf, startHour, type HourAround } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

interface Offer {
  readonly powerW: number;
  readonly hours: number;
  readonly mostWh: number;
  readonly topUp: boolean;
}

const wholeHour: Offer = { powerW: 10, hours: 1, mostWh: Infinity, topUp: true };

/** A device that holds 5 Wh, short of so much, before it is given anything. */
function hungry(shortWh: number, changes: Partial<DeviceModel> = {}, around: Partial<HourAround> = {}) {
  const { network, state } = startHour({ devices: [deviceOf(changes)] }, [5], around);
  state.deficitWh[0] = shortWh;
  const give = (offer: Partial<Offer> = {}): number => {
    const { powerW, hours, mostWh, topUp } = { ...wholeHour, ...offer };
    setLink(state, powerW, hours, mostWh);
    giveDevice(network, state, 0, topUp);
    return state.link[link.takenWh]!;
  };
  return { state, give };
}

describe('giveDevice()', () => {
  it('gives nothing without energy, time or a wish', () => {
    const { state, give } = hungry(0);
    expect([give({ mostWh: 0 }), give({ hours: 0 }), give({ topUp: false })]).toEqual([0, 0, 0]);
    expect(state.storedWh[0]).toBe(5);
  });

  it('covers what is short first, then fills the battery', () => {
    // 2 Wh at the plug cover 1.6 Wh; the other 8 Wh store 6.4 Wh.
    const { state, give } = hungry(1.6);
    expectNear(give(), 10, 1e-9, 'taken, Wh');
    expectNear(state.storedWh[0]!, 11.4, 1e-9, 'stored, Wh');
    expect(state.deficitWh[0]).toBe(0);
  });

  it('covers only what is short if it may not top up', () => {
    const { state, give } = hungry(1.6);
    expectNear(give({ topUp: false }), 2, 1e-9, 'taken, Wh');
    expect(state.storedWh[0]).toBe(5);
  });

  it('stops where the source has no more', () => {
    const { state, give } = hungry(1.6);
    expectNear(give({ mostWh: 3 }), 3, 1e-9, 'taken, Wh');
    expectNear(state.storedWh[0]!, 5.8, 1e-9, 'stored, Wh');
  });

  it('leaves what the link can’t carry as deficit', () => {
    const { state, give } = hungry(1.6);
    expectNear(give({ powerW: 1 }), 1, 1e-9, 'taken, Wh');
    expectNear(state.deficitWh[0]!, 0.8, 1e-9, 'deficit, Wh');
  });

  it('tapers into a nearly full battery', () => {
    // 8 W into the cells; 11 of 15 Wh at full power leave the taper's 4 Wh after 1.375 h; in 2 h 20 - 4 exp(-8 x 0.625 / 4).
    const { state, give } = hungry(0);
    state.socketHours[0] = 2;
    give({ hours: 2 });
    expectNear(state.storedWh[0]!, 20 - 4 * Math.exp(-1.25), 1e-9, 'stored, Wh');
  });

  it('lets sources share one socket, not add up', () => {
    const { state, give } = hungry(0);
    expectNear(give({ powerW: 5 }), 5, 1e-9, 'from the weak one, Wh');
    expectNear(give({ powerW: 10 }), 5, 1e-9, 'from the strong one, Wh');
    expectNear(state.storedWh[0]!, 13, 1e-9, 'stored, Wh');
  });

  it('runs a device whose cells are too cold to be charged, and charges none', () => {
    const { state, give } = hungry(1.6, {}, { charges: false });
    expectNear(give(), 2, 1e-9, 'taken, Wh');
    expect(state.storedWh[0]).toBe(5);
  });
});

describe('giveDevice() to a navigation unit that draws more on the cable', () => {
  // 1 W of the 10 W at the plug is drawn only for being plugged in: nine tenths of 8 W reach the cells.
  it('loses the draw at the plug', () => {
    const { state, give } = hungry(0, { pluggedW: 1 });
    state.inUse[0] = 1;
    expectNear(give(), 10, 1e-9, 'taken, Wh');
    expectNear(state.storedWh[0]!, 5 + 7.2, 1e-9, 'stored, Wh');
    expectNear(state.pluggedWh[0]!, 1, 1e-9, 'drawn for being plugged in, Wh');
  });
  it('loses it too while a deficit is covered', () => {
    // 3.6 Wh take half an hour of 7.2 W.
    const { state, give } = hungry(3.6, { pluggedW: 1 });
    state.inUse[0] = 1;
    expectNear(give({ topUp: false }), 5, 1e-9, 'taken, Wh');
    expectNear(state.pluggedWh[0]!, 0.5, 1e-9, 'drawn for being plugged in, Wh');
  });
  it('loses nothing while it is not used', () => {
    const { state, give } = hungry(0, { pluggedW: 1 });
    give();
    expectNear(state.storedWh[0]!, 13, 1e-9, 'stored, Wh');
    expect(state.pluggedWh[0]).toBe(0);
  });
  it('is not plugged in where the draw would eat the whole link', () => {
    const { state, give } = hungry(1, { pluggedW: 2 });
    state.inUse[0] = 1;
    expect(give({ powerW: 2 })).toBe(0);
    expect([state.storedWh[0], state.deficitWh[0]]).toEqual([5, 1]);
  });
});

describe('fillBank()', () => {
  const into = (bank: Partial<BankModel>, around: Partial<HourAround> = {}) => {
    const { network, state } = startHour({ banks: [bankOf(bank)] }, [0], around);
    const give = (): number => {
      setLink(state, 10, 1, Infinity);
      fillBank(network, state, 0);
      return state.link[link.takenWh]!;
    };
    return { state, give };
  };
  it('fills nothing in frost or heat', () => {
    const { state, give } = into({}, { charges: false });
    expect([give(), state.storedWh[0]]).toEqual([0, 0]);
  });
  it('stores what is taken, less the loss', () => {
    const { state, give } = into({});
    expectNear(give(), 10, 1e-9, 'taken, Wh');
    expectNear(state.storedWh[0]!, 9, 1e-9, 'stored, Wh');
  });
  it.each([false, true])(
    'has only the time that serving and other sources leave it (does both: %s)',
    (does) => {
      const { state, give } = into({ chargesWhileServing: does });
      state.turnHours[0] = 0.25;
      expectNear(give(), 2.5, 1e-9, 'taken, Wh');
      expectNear(state.turnHours[0], 0, 1e-12, 'time left, h');
    },
  );
});
