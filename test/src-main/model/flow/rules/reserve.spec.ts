import { describe, expect, it } from 'vitest';
import { layReserve, spareWh, surplusWh } from '../../../../../src-main/model/flow/rules/reserve.ts';
import { createState } from '../../../../../src-main/model/flow/step-state.ts';
import { bankOf, deviceOf, startHour, type HourAround } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

/** What must be stored after each step, at a factor of the planned use. */
function reserve(needWh: readonly number[], wallWh: readonly number[], useFactor = 1): number[] {
  const { network, course } = startHour({}, []);
  const steps = needWh.length;
  const state = createState(network, steps);
  state.useFactor = useFactor;
  const laid = {
    ...{ ...course, steps },
    ...{ mustHaveNeedWh: Float64Array.from(needWh), wallIncomeWh: Float64Array.from(wallWh) },
  };
  layReserve(laid, state);
  return [...state.reserveWh];
}

describe('layReserve()', () => {
  it('needs nothing where nothing is used', () => {
    expect(reserve([0, 0, 0], [0, 0, 0])).toEqual([0, 0, 0]);
  });

  // The must-haves' use is held a quarter larger than planned (common practice, no source).
  it('needs what the steps to come use, and nothing at the end', () => {
    expect(reserve([4, 8, 4, 12], [0, 0, 0, 0])).toEqual([30, 20, 15, 0]);
  });

  it('needs only what a weak wall leaves lacking', () => {
    // After step 3 nothing, after step 2 what step 3 lacks: 5; then 5 + 15; then 20 + 10 - 18.
    expect(reserve([4, 8, 12, 4], [0, 18, 0, 0])).toEqual([12, 20, 5, 0]);
  });

  it('needs nothing before a wall that fills the stores', () => {
    // What the wall brings beyond the need is not counted before it.
    expect(reserve([4, 8, 12, 4], [0, 100, 0, 0])).toEqual([0, 20, 5, 0]);
  });

  it('is laid for the use that is tried', () => {
    expect(reserve([4, 8, 12, 4], [0, 18, 0, 0], 2)).toEqual([42, 40, 10, 0]);
  });

  it('is laid anew when another use is tried', () => {
    const { network, course } = startHour({}, []);
    const state = createState(network, 2);
    const laid = {
      ...{ ...course, steps: 2 },
      ...{ mustHaveNeedWh: Float64Array.of(0, 4), wallIncomeWh: Float64Array.of(0, 0) },
    };
    for (const useFactor of [1, 3]) {
      state.useFactor = useFactor;
      layReserve(laid, state);
      expect(state.reserveWh[0]).toBe(5 * useFactor);
    }
  });
});

const kit = {
  devices: [deviceOf(), deviceOf({ key: 'nice', mustHave: false })],
  banks: [bankOf()],
};
/** Must-have, nice-to-have, bank. */
const after = (storedWh: readonly number[], around: Partial<HourAround>) => startHour(kit, storedWh, around);

describe('surplusWh()', () => {
  it('is what must-haves and banks hold for them beyond the reserve', () => {
    // A bank's 40 Wh end as 40 x 0.5 x 0.8 = 16 Wh in the must-have's battery; the nice-to-have's own do not count.
    const { network, course, state } = after([10, 20, 40], { reserveWh: 12 });
    expectNear(surplusWh(network, course, state, 0), 10 + 16 - 12, 1e-9, 'surplus, Wh');
  });

  it('is below nothing while the must-haves are short', () => {
    const { network, course, state } = after([2, 20, 0], { reserveWh: 12 });
    expectNear(surplusWh(network, course, state, 0), -10, 1e-9, 'surplus, Wh');
  });

  it('leaves out what the coldest step of the tour keeps', () => {
    // A tenth of 20 Wh and of 40 Wh; the nearly empty one has no more to leave out than it holds.
    const { network, course, state } = after([10, 0, 40], { mostUnreachableShare: 0.1, reserveWh: 10 });
    expectNear(surplusWh(network, course, state, 0), 8 + 36 * 0.4 - 10, 1e-9, 'surplus, Wh');
    const empty = after([1, 0, 0], { mostUnreachableShare: 0.1 });
    expectNear(surplusWh(empty.network, empty.course, empty.state, 0), 0, 1e-9, 'surplus, Wh');
  });
});

describe('surplusWh() of must-haves that hold unevenly', () => {
  const uneven = { devices: [deviceOf({ key: 'a' }), deviceOf({ key: 'b' })], banks: [bankOf()] };

  it('is what the banks hold beyond what each lacks: none can have what another holds', () => {
    // One holds 20 Wh and needs none; the other lacks 8 x 1.25 - 1 = 9 Wh until the next wall, of the bank's 16.
    const hour = startHour(uneven, [20, 1, 40], { reserveWh: 10, needToWallWh: [0, 8] });
    expectNear(surplusWh(hour.network, hour.course, hour.state, 0), 16 - 9, 1e-9, 'surplus, Wh');
  });

  it('is reckoned for the use that is tried', () => {
    const hour = startHour(uneven, [20, 1, 40], { reserveWh: 10, needToWallWh: [0, 8] });
    hour.state.useFactor = 2;
    expectNear(surplusWh(hour.network, hour.course, hour.state, 0), 16 - 19, 1e-9, 'surplus, Wh');
  });
});

describe('spareWh()', () => {
  it('is the surplus while the banks have room', () => {
    const { network, course, state } = after([10, 0, 30], { reserveWh: 15 });
    expectNear(spareWh(network, course, state, 0), 10 + 12 - 15, 1e-9, 'spare, Wh');
  });

  it('is what stands at the brim of a full bank, though the must-haves are short', () => {
    // Above 38 of 40 Wh (common practice, no source): 1.5 Wh, of which half comes out.
    const { network, course, state } = after([0, 0, 39.5], { reserveWh: 100 });
    expectNear(spareWh(network, course, state, 0), 0.75, 1e-9, 'spare, Wh');
  });

  it('is nothing otherwise, when the must-haves are short', () => {
    const { network, course, state } = after([0, 0, 30], { reserveWh: 100 });
    expect(spareWh(network, course, state, 0)).toBeLessThanOrEqual(0);
  });

  it('is no brim while another bank has room', () => {
    const banks = [bankOf({ key: 'a' }), bankOf({ key: 'b' })];
    const { network, course, state } = startHour({ ...kit, banks }, [0, 0, 40, 30], { reserveWh: 100 });
    expect(spareWh(network, course, state, 0)).toBeLessThanOrEqual(0);
  });
});
