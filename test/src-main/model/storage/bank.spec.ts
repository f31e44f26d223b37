import { describe, it } from 'vitest';
import { bankCapacityWh, selfDischargePerHour } from '../../../../src-main/model/storage/bank.ts';
import { expectNear } from '../../../support/near.ts';

describe('bankCapacityWh()', () => {
  it('is the label times health without a measurement', () =>
    expectNear(bankCapacityWh(74, 0.9, null, 0.85), 66.6, 1e-9, 'in the cells, Wh'));
  it('turns a measured delivery back by the loss on the way out, and leaves health alone', () =>
    expectNear(bankCapacityWh(74, 0.9, 60, 0.8), 75, 1e-9, 'in the cells, Wh'));
});

describe('selfDischargePerHour()', () => {
  it('compounds to the monthly figure over 720 hours', () =>
    expectNear((1 - selfDischargePerHour(2)) ** 720, 0.98, 1e-9, 'share left'));
  it('is nothing for a bank that keeps its charge', () =>
    expectNear(selfDischargePerHour(0), 0, 0, 'a share'));
});
