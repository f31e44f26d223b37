import { describe, expect, it } from 'vitest';
import { plugPowerW, type PanelModel } from '../../../../src-main/model/sun/panel.ts';
import { expectNear } from '../../../support/near.ts';

const panel: PanelModel = {
  ratedW: 20,
  temperatureCoefficientPerK: -0.004,
  noctDegC: 45,
  regulatorEfficiency: 0.85,
  startWm2: 80,
  outputW: 15,
};

describe('plugPowerW()', () => {
  it('is nothing in the dark and below the start threshold', () => {
    expect(plugPowerW(0, 20, panel)).toBe(0);
    expect(plugPowerW(79, 20, panel)).toBe(0);
    expect(plugPowerW(80, 20, panel)).toBeGreaterThan(0);
  });

  it('is never more than the plug gives', () => {
    expect(plugPowerW(1000, -20, panel)).toBe(15);
  });

  it('is rating, temperature and regulator between', () => {
    // 500 W/m2 at 20 degC: cells at 35.625 degC, 10 W less 4.25 %, times 0.85.
    expectNear(plugPowerW(500, 20, panel), 10 * (1 - 0.004 * 10.625) * 0.85, 1e-9, 'power, W');
  });

  it('falls with heat', () => {
    expect(plugPowerW(600, 40, panel)).toBeLessThan(plugPowerW(600, 10, panel));
  });

  it('a 6 W panel gives about 1 A at 5 V at best', () => {
    // Common practice, no source: full sun, 25 degC air, its own regulator.
    const small = { ...panel, ratedW: 6, outputW: 7.5, regulatorEfficiency: 0.9 };
    expectNear(plugPowerW(1000, 25, small) / 5, 1, 0.1, 'current, A');
  });
});
