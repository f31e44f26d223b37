import { describe, expect, it } from 'vitest';
import { selfDischarge, standbyLosses } from '../../../../../src-main/model/flow/rules/bank-losses.ts';
import { bankOf, pd, startHour } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

describe('standbyLosses()', () => {
  const twoOutlets = bankOf({ standbyW: 0.5, outputs: [pd(10), pd(10)] });
  /** A bank whose two outlets were busy for so many hours together. */
  const afterServing = (busyHours: number, storedWh = 10) => {
    const { network, course, state } = startHour({ banks: [twoOutlets] }, [storedWh]);
    state.outletHours[0] = 2 - busyHours;
    standbyLosses(network, course, state);
    return state;
  };

  it.each([
    { busyHours: 0, lostWh: 0 },
    { busyHours: 0.4, lostWh: 0.2 },
    { busyHours: 1.7, lostWh: 0.5 },
  ])('draws $lostWh Wh after $busyHours h of serving in an hour', ({ busyHours, lostWh }) => {
    const { storedWh, idleLossWh } = afterServing(busyHours);
    expectNear(storedWh[0]!, 10 - lostWh, 1e-12, 'stored, Wh');
    expectNear(idleLossWh[0]!, lostWh, 1e-12, 'lost, Wh');
  });

  it('never takes a bank below empty', () => {
    const { storedWh, idleLossWh } = afterServing(1, 0.3);
    expect(storedWh[0]).toBe(0);
    expectNear(idleLossWh[0]!, 0.3, 1e-12, 'lost, Wh');
  });
});

describe('selfDischarge()', () => {
  it('takes its share of what is stored, day after day', () => {
    const { network, state } = startHour({ banks: [bankOf({ selfDischargePerDay: 0.1 })] }, [10]);
    selfDischarge(network, state);
    selfDischarge(network, state);
    expectNear(state.storedWh[0]!, 8.1, 1e-12, 'stored, Wh');
    expectNear(state.idleLossWh[0]!, 1.9, 1e-12, 'lost, Wh');
  });
  it('takes nothing from an empty bank', () => {
    const { network, state } = startHour({ banks: [bankOf({ selfDischargePerDay: 0.1 })] }, [0]);
    selfDischarge(network, state);
    expect(state.storedWh[0]).toBe(0);
  });
});
