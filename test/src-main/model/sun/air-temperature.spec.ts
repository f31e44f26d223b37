import { describe, expect, it } from 'vitest';
import { airDegC, atHeight } from '../../../../src-main/model/sun/air-temperature.ts';
import { expectNear } from '../../../support/near.ts';

describe('air temperature', () => {
  it('is warmest at 15 h and coldest at 3 h', () => {
    expectNear(airDegC(15, 4, 20), 20, 1e-9, 'warmest, degC');
    expectNear(airDegC(3, 4, 20), 4, 1e-9, 'coldest, degC');
  });
  it('averages to the middle of minimum and maximum', () => {
    const mean =
      Array.from({ length: 24 }, (_, hour) => airDegC(hour + 0.5, -5, 9)).reduce((a, b) => a + b) / 24;
    expectNear(mean, 2, 1e-9, 'mean, degC');
  });
  it('falls by 6.5 K a kilometre of height', () => {
    // ISO 2533:1975.
    expectNear(atHeight(20, 500, 1500), 13.5, 1e-9, 'degC');
    expect(atHeight(20, 1500, 500)).toBeGreaterThan(20);
  });
});
