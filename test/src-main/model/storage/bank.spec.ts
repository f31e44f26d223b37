import { describe, it } from 'vitest';
import { bankCapacityWh, selfDischargePerDay } from '../../../../src-main/model/storage/bank.ts';
import { expectNear } from '../../../support/near.ts';

describe('bankCapacityWh()', () => {
  it('holds nothing when worn out', () =>
    expectNear(bankCapacityWh(74, 0, null, 0.85), 0, 0, 'in the cells, Wh'));
  it('is the label times health without a measurement', () =>
    expectNear(bankCapacityWh(74, 0.9, null, 0.85), 66.6, 1e-9, 'in the cells, Wh'));
  it('turns a measured delivery back by the loss on the way out, and leaves health alone', () =>
    expectNear(bankCapacityWh(74, 0.9, 60, 0.8), 75, 1e-9, 'in the cells, Wh'));
});

describe('selfDischargePerDay()', () => {
  it('is nothing for a bank that keeps its charge', () =>
    expectNear(selfDischargePerDay(0), 0, 0, 'a share'));
  it.each([2, 5, 30])('compounds to %d % of a month over 30 days', (pct) =>
    expectNear((1 - selfDischargePerDay(pct)) ** 30, 1 - pct / 100, 1e-12, 'share left'),
  );
  it('leaves something after a day even when a month takes all', () => {
    // A hundredth is left after 30 days, so 0.01^(1/30) = exp(-0.15351) = 0.8577 after one.
    expectNear(1 - selfDischargePerDay(100), 0.8577, 5e-5, 'share left');
  });
});
