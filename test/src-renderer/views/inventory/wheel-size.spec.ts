import { describe, expect, it } from 'vitest';
import { usualItem } from '../../../../shared-types/usual-item.ts';
import { generatorHub } from '../../../../shared-types/hub-item.ts';
import { circumferenceM, rimsMm, tyreMm } from '../../../../src-renderer/views/inventory/wheel-size.ts';

describe('circumferenceM()', () => {
  it('is that of the usual hub’s wheel for a rim of 622 and a tyre of 32 mm', () => {
    expect(circumferenceM(622, 32)).toBe(usualItem('generator-hub', 'EUR').wheelCircumferenceM);
  });

  it('grows with rim and with tyre', () => {
    const byRim = rimsMm.map((rim) => circumferenceM(rim, tyreMm.usual));
    expect(byRim).toEqual(byRim.toSorted((a, b) => a - b));
    expect(circumferenceM(406, 50)).toBeGreaterThan(circumferenceM(406, 35));
  });

  it('is one that a hub’s form takes for every tyre and rim', () => {
    for (const rim of rimsMm)
      for (const tyre of [tyreMm.least, tyreMm.usual, tyreMm.most])
        expect(generatorHub.shape.wheelCircumferenceM.safeParse(circumferenceM(rim, tyre)).success).toBe(
          true,
        );
  });
});
