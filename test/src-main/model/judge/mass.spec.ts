import { describe, expect, it } from 'vitest';
import { usualFrontLoad } from '../../../../shared-types/front-load.ts';
import { frontShares } from '../../../../src-main/model/judge/front-load.ts';
import { massOf } from '../../../../src-main/model/judge/mass.ts';
import { expectNear } from '../../../support/near.ts';

const hub = {
  itemId: 'hub',
  label: 'Hub',
  kind: 'generator-hub',
  quantity: 1,
  mount: 'front-wheel',
  massG: 460,
  replacesG: 150,
} as const;
const bank = {
  ...hub,
  itemId: 'bank',
  kind: 'bank',
  mount: 'rear-rack',
  massG: 350,
  replacesG: 0,
  quantity: 2,
} as const;

const shares = frontShares(usualFrontLoad);

describe('massOf()', () => {
  it('weighs nothing with nothing', () => {
    expect(massOf([], shares)).toEqual({ carriedG: 0, frontWheelG: 0, lines: [] });
  });
  it('credits the hub that is replaced', () => {
    expect(massOf([hub], shares)).toMatchObject({ carriedG: 310, frontWheelG: 310 });
  });
  it('counts every copy, and the front wheel’s share by mount', () => {
    const { carriedG, frontWheelG } = massOf([hub, bank], shares);
    expect(carriedG).toBe(1010);
    // On the rear rack, 0.05 m ahead of the rear axle of a wheelbase of 1.08 m.
    expectNear(frontWheelG, 310 + (700 * 0.05) / 1.08, 1e-9, 'front wheel, g');
  });
  it('takes a share of the rider’s own', () => {
    const { frontWheelG } = massOf([bank], { ...shares, 'rear-rack': 0.1 });
    expectNear(frontWheelG, 70, 1e-9, 'front wheel, g');
  });
});
