import { describe, expect, it } from 'vitest';
import { chargedWh, fullWh } from '../../../../../src-main/model/judge/stop-plan/charge.ts';
import { stopStore } from '../../../../support/stop-fixture.ts';

describe('chargedWh', () => {
  it('stores nothing without power or time', () => {
    expect(chargedWh(stopStore(), 2, 0, 1)).toBe(2);
    expect(chargedWh(stopStore(), 2, 10, 0)).toBe(2);
  });

  it('stores what the plug gives, less the loss, below the taper', () => {
    expect(chargedWh(stopStore(), 2, 5, 0.5)).toBeCloseTo(2 + 5 * 0.5 * 0.9, 12);
  });

  it('unplugs what is full, and takes nothing from what is fuller', () => {
    expect(fullWh(stopStore())).toBeCloseTo(9.8, 12);
    expect(chargedWh(stopStore(), 9, 10, 100)).toBeCloseTo(9.8, 12);
    expect(chargedWh(stopStore(), 9.9, 10, 1)).toBe(9.9);
  });

  it('stores nothing in a direct load', () => {
    expect(chargedWh(stopStore({ capacityWh: 0, taperRoomWh: 0 }), 0, 10, 1)).toBe(0);
  });
});
