import { describe, expect, it } from 'vitest';
import { labelWh } from '../../shared-types/item.ts';

describe('labelWh()', () => {
  // By the definition of the watt-hour: 20 Ah x 3.7 V = 74 Wh.
  it('is charge times the voltage of the cells', () => {
    expect(labelWh({ as: 'mah', mAh: 20_000, cellV: 3.7 })).toBeCloseTo(74, 9);
  });

  it('is the printed figure where one is printed', () => {
    expect(labelWh({ as: 'wh', wh: 72 })).toBe(72);
  });
});
