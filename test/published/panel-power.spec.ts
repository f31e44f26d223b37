import { describe, expect, it } from 'vitest';
import { cellDegC, cellPowerW, plugPowerW, type PanelModel } from '../../src-main/model/sun/panel.ts';
import { expectNear } from '../support/near.ts';

const panel: PanelModel = {
  ratedW: 100,
  temperatureCoefficientPerK: -0.003,
  noctDegC: 50,
  regulatorEfficiency: 1,
  startWm2: 0,
  outputW: 1000,
};

describe('cell temperature from the nominal operating temperature', () => {
  // The Ross form of the definition; values of pvlib-python, tests/test_temperature.py, exact.
  it.each([
    { light: 1000, air: 30, cell: 67.5 },
    { light: 800, air: 20, cell: 50 },
    { light: 700, air: 30, cell: 56.25 },
    { light: 600, air: 40, cell: 62.5 },
  ])('is $cell degC in $light W/m2 and $air degC', ({ light, air, cell }) =>
    expectNear(cellDegC(light, air, 50), cell, 1e-9, 'cell temperature, degC'),
  );
  it.each([33, 48, 58])('returns the nominal temperature of %d at its conditions', (noct) =>
    // Best, typical and worst module: 800 W/m2 and 20 degC air by definition.
    expectNear(cellDegC(800, 20, noct), noct, 1e-9, 'cell temperature, degC'),
  );

  /*
   * Skoplaki & Palyvos 2009 (as in the source of pvlib-python): Tc = Ta + k G with the Ross coefficient k, K m2/W. By the definition
   * k = (NOCT - 20)/800; rises over the air in full sun, exact.
   */
  it.each([
    { mounting: 'free standing', ross: 0.0208, rise: 20.8 },
    { mounting: 'on a well aired roof', ross: 0.02, rise: 20 },
    { mounting: 'on a flat roof', ross: 0.026, rise: 26 },
    { mounting: 'on a poorly aired roof', ross: 0.0342, rise: 34.2 },
    { mounting: 'on an unaired roof', ross: 0.0563, rise: 56.3 },
  ])('rises $rise K in full sun $mounting', ({ ross, rise }) =>
    expectNear(cellDegC(1000, 25, 20 + 800 * ross) - 25, rise, 1e-9, 'rise over the air, K'),
  );
});

describe('power of the cells', () => {
  it('falls with light and heat as published', () => {
    // pvlib-python, tests/test_pvsystem.py: 100 W, 900 W/m2, cells at 30 degC, -0.3 %/K; exact.
    expectNear(cellPowerW(900, 30, panel), 88.65, 1e-9, 'power, W');
  });
  it('is the rating at standard conditions: 1000 W/m2, 25 degC', () =>
    // IEC 60904-10 and 61853-1.
    expectNear(cellPowerW(1000, 25, panel), 100, 1e-9, 'power, W'));
  it('keeps 0.875 of the rating in full sun', () => {
    // Both published formulas together: NOCT 45 degC, air 25 degC, -0.4 %/K; cells at 56.25 degC.
    const common = { ...panel, noctDegC: 45, temperatureCoefficientPerK: -0.004 };
    expectNear(cellDegC(1000, 25, 45), 56.25, 1e-9, 'cell temperature, degC');
    expectNear(plugPowerW(1000, 25, common), 87.5, 1e-9, 'power, W');
  });
  it('is nothing at all in the dark', () => {
    expect(cellPowerW(0, 20, panel)).toBe(0);
  });
});
