import { describe, expect, it } from 'vitest';
import { useOwnBatteries, wish } from '../../../../../src-main/model/flow/rules/use-own-batteries.ts';
import { deviceOf, startHour, type HourAround } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

const device = deviceOf();

function use(storedWh: number, needWh: number, around: Partial<HourAround> = {}) {
  const { network, course, state } = startHour({ devices: [device] }, [storedWh], {
    ...around,
    needWh: [needWh],
  });
  const wants = useOwnBatteries(network, course, state, 0);
  return { wants, stored: state.storedWh[0]!, deficit: state.deficitWh[0]! };
}

describe('useOwnBatteries()', () => {
  it('leaves as deficit what the battery does not hold', () => {
    const { wants, stored, deficit } = use(0.6, 2);
    expect([wants, stored]).toEqual([wish.short, 0]);
    expectNear(deficit, 1.4, 1e-12, 'deficit, Wh');
  });

  it('leaves all of it as deficit to a load without battery', () => {
    const { network, course, state } = startHour({ devices: [deviceOf({ capacityWh: 0 })] }, [0], {
      needWh: [3],
    });
    expect(useOwnBatteries(network, course, state, 0)).toBe(wish.short);
    expect(state.deficitWh[0]).toBe(3);
  });

  it('wants nothing while little is missing, and to be filled when low', () => {
    // Low is 18 2/3 Wh: what ten minutes at 8 W bring, for that is less than a tenth.
    expect(use(20, 1)).toEqual({ wants: wish.none, stored: 19, deficit: 0 });
    expect(use(19, 1)).toEqual({ wants: wish.low, stored: 18, deficit: 0 });
  });

  it('uses the last of a battery without being short', () => {
    expect(use(2, 2)).toEqual({ wants: wish.low, stored: 0, deficit: 0 });
  });

  it('finds part of the battery out of reach in the cold', () => {
    // A quarter of 20 Wh: of 6 Wh stored 1 comes out.
    expect(use(6, 3, { unreachableShare: 0.25 })).toEqual({ wants: wish.short, stored: 5, deficit: 2 });
  });

  it('takes nothing from a battery that is all out of reach', () => {
    expect(use(3, 1, { unreachableShare: 0.25 })).toEqual({ wants: wish.short, stored: 3, deficit: 1 });
  });

  it('does not miss in the cold what is not used', () => {
    const { wants, stored, deficit } = use(3, 0, { unreachableShare: 0.25 });
    expect([stored, deficit]).toEqual([3, 0]);
    expect(wants).not.toBe(wish.short);
  });

  it('uses more on a day of more use', () => {
    const { network, course, state } = startHour({ devices: [device] }, [10], { needWh: [2] });
    state.useScale[0] = 1.5;
    useOwnBatteries(network, course, state, 0);
    expect(state.storedWh[0]).toBe(7);
  });

  it('tells the most urgent wish of all devices', () => {
    const devices = [deviceOf({ key: 'a' }), deviceOf({ key: 'b' }), deviceOf({ key: 'c' })];
    const { network, course, state } = startHour({ devices }, [5, 1, 5], { needWh: [1, 2, 1] });
    expect(useOwnBatteries(network, course, state, 0)).toBe(wish.short);
  });
});
