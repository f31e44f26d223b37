import { describe, expect, it } from 'vitest';
import { chargedWh } from '../../../../../src-main/model/judge/stop-plan/charge.ts';
import { levelsOf } from '../../../../../src-main/model/judge/stop-plan/levels.ts';
import { stopStore } from '../../../../support/stop-fixture.ts';

describe('levelsOf', () => {
  it('knows equal amounts by one number, and different ones by different numbers', () => {
    const levels = levelsOf(stopStore());
    const first = levels.numberOf(3);
    expect(levels.numberOf(3 + 1e-9)).toBe(first);
    expect(levels.numberOf(3.001)).not.toBe(first);
    expect(levels.wh[first]).toBe(3);
  });

  it('charges as the store does', () => {
    const store = stopStore();
    const levels = levelsOf(store);
    const after = levels.charging(10, 0.25)(levels.numberOf(7));
    expect(levels.wh[after]).toBeCloseTo(chargedWh(store, 7, 10, 0.25), 6);
  });

  it('meets at the same level by different ways', () => {
    const levels = levelsOf(stopStore());
    const [strong, weak] = [levels.charging(10, 0.1), levels.charging(5, 0.1)];
    const start = levels.numberOf(0);
    expect(strong(weak(start))).toBe(weak(strong(start)));
  });
});
