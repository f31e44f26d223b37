import { describe, expect, it } from 'vitest';
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

describe('massOf()', () => {
  it('weighs nothing with nothing', () => {
    expect(massOf([])).toEqual({ carriedG: 0, frontWheelG: 0, lines: [] });
  });
  it('credits the hub that is replaced', () => {
    expect(massOf([hub])).toMatchObject({ carriedG: 310, frontWheelG: 310 });
  });
  it('counts every copy, and the front wheel’s share by mount', () => {
    const { carriedG, frontWheelG } = massOf([hub, bank]);
    expect(carriedG).toBe(1010);
    expectNear(frontWheelG, 310 + 700 * 0.05, 1e-9, 'front wheel, g');
  });
});
