import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoTours } from '../../../../db/demo/demo.ts';
import type { Item, ItemKind, ItemOf } from '../../../../shared-types/item.ts';
import { bankModels, ofKind } from '../../../../src-main/workbench/assemble/kit.ts';
import {
  carries,
  withLosses,
  withLuck,
  withRackFactor,
  withUse,
} from '../../../../src-main/workbench/outlook/varied-inputs.ts';
import { demoGround } from '../../../support/demo-ground.ts';
import { expectNear } from '../../../support/near.ts';

const tour = demoTours[0]!;
const chancesOf = (luck: number): readonly number[] =>
  withLuck(tour, luck).legs.flatMap(({ dayStops }) => dayStops.map(({ chance }) => chance));
const itemOf = <K extends ItemKind>(kind: K, id: string): ItemOf<K> =>
  ofKind([{ item: demoItems.find((item) => item.id === id)!, carried: 1 }], kind)[0]!.item;

describe('the luck with outlets', () => {
  it('goes from never over the plan to always', () => {
    expect(chancesOf(-1)).toEqual([0, 0, 0]);
    expect(chancesOf(0)).toEqual([0.5, 0, 0]);
    expect(chancesOf(1)).toEqual([1, 1, 1]);
    expect(chancesOf(-0.5)[0]).toBe(0.25);
    expect(chancesOf(0.5)[0]).toBe(0.75);
  });
});

describe('the losses of a bank', () => {
  const bank = itemOf('bank', 'demo-bank-20');

  it('grow with the factor, in and out', () => {
    // 8 % in and 15 % out, by half again: 12 % and 22.5 %.
    const { efficiencyIn, efficiencyOut } = withLosses(bank, 1.5) as typeof bank;
    expectNear(efficiencyIn, 0.88, 1e-12, 'in');
    expectNear(efficiencyOut, 0.775, 1e-12, 'out');
    expect(withLosses(bank, 1)).toEqual(bank);
  });

  it('leave a measured delivery as it is', () => {
    const deliveredWh = (item: Item): number => {
      const [model] = bankModels([{ item: item as typeof bank, carried: 1 }]);
      return model!.capacityWh * model!.efficiencyOut;
    };
    for (const factor of [0.5, 1, 1.5]) expectNear(deliveredWh(withLosses(bank, factor)), 60, 1e-9, 'Wh');
  });

  it('never take all, however lossy the bank', () => {
    const worst = withLosses({ ...bank, efficiencyIn: 0.3, efficiencyOut: 0.3 }, 1.5) as typeof bank;
    expect(Math.min(worst.efficiencyIn, worst.efficiencyOut)).toBeGreaterThan(0);
  });

  it('are no matter of other items', () => {
    const phone = itemOf('device', 'demo-phone');
    expect(withLosses(phone, 1.5)).toBe(phone);
  });
});

describe('the use of a device', () => {
  it('is multiplied whichever way it is given, and that of a bank is none', () => {
    const phone = withUse(itemOf('device', 'demo-phone'), 2) as ItemOf<'device'>;
    expect(phone.use).toEqual({ as: 'activity', ridingW: 0.5, stopW: 1.4, eveningW: 2.4, nightW: 0.16 });
    const camera = withUse(itemOf('device', 'demo-camera'), 2) as ItemOf<'device'>;
    expect(camera.use).toEqual({ as: 'day', whPerDay: 7 });
    const bank = itemOf('bank', 'demo-bank-20');
    expect(withUse(bank, 2)).toBe(bank);
  });
});

describe('the rack factor', () => {
  const inputs = { ground: demoGround(), scenarios: demoScenarios };

  it('is set in every scenario and leaves the ground the very same', () => {
    const moved = withRackFactor(inputs, 0.7);
    expect(moved.scenarios.map(({ placement }) => placement.rackFactor)).toEqual([0.7, 0.7, 0.7]);
    expect(moved.ground).toBe(inputs.ground);
  });

  it('is looked for only where a panel is carried', () => {
    expect(demoScenarios.map((scenario) => carries(scenario, inputs, 'panel'))).toEqual([false, true, false]);
  });
});
