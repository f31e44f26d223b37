import { describe, expect, it } from 'vitest';
import { airDensityKgM3, pressurePa } from '../../src-main/model/ride/air-density.ts';
import { alternatorOutput, ratedLoadOhm, referenceAlternator } from '../../src-main/model/ride/alternator.ts';
import { idleDragW, loadedDragW, type HubModel } from '../../src-main/model/ride/hub.ts';
import { powerParts, riderPowerW, type RideModel } from '../../src-main/model/ride/power-balance.ts';
import { steadySpeedKmh } from '../../src-main/model/ride/solve-speed.ts';
import { expectNear } from '../support/near.ts';

/*
 * Martin, Milliken, Cobb, McFadden, Coggan (1998), Validation of a mathematical model for road cycling power, J. Appl.
 * Biomech. 14(3):276-291. The paper's wheel-spoke term is folded into the drag area: F_w 0.0044 m2.
 */
const paper: RideModel = {
  massKg: 90,
  dragAreaM2: 0.2565 + 0.0044,
  rollingCoefficient: 0.0032,
  airDensityKgM3: 1.2234,
  drivetrainEfficiency: 0.976,
};

describe('the power balance of Martin et al.', () => {
  it('gives the parts of the worked example', () => {
    // Appendix: 90 kg, 8.36 m/s, grade 0.003; 0.1 W as the inputs are rounded. Its air drag has wind, which we leave out.
    const parts = powerParts(8.36, 0.003, paper);
    expectNear(parts.rollingW, 23.6, 0.1, 'rolling');
    expectNear(parts.bearingsW, 1.4, 0.1, 'bearings');
    expectNear(parts.slopeW, 22.1, 0.1, 'slope');
  });

  const subject = { ...paper, massKg: 81.9, dragAreaM2: 0.264 + 0.0044 };
  it('needs 255 W at 11 m/s on the flat, as printed', () =>
    expectNear(riderPowerW(11, 0, subject), 255, 0.5, 'power'));
  it('solves 255 W back to 11 m/s', () =>
    expectNear(steadySpeedKmh(255, 0, subject) / 3.6, 11, 0.01, 'speed'));
  it.each([-1, 0, 2, 6])('stays within 1 m/s of the paper’s line at a grade of %d in 100', (gradePct) => {
    // Figure 4: V = 11.26 - 1.25 grade (m/s), the paper's straight fit to a convex curve.
    const speedMs = steadySpeedKmh(255, gradePct / 100, subject) / 3.6;
    expectNear(speedMs, 11.26 - 1.25 * gradePct, 1, 'speed');
  });
});

describe('the standard atmosphere of ISO 2533', () => {
  // Geopotential heights; the published table prints density to 1e-4 and pressure to 0.01 Pa (constants to 5 digits: 1 Pa).
  it.each([
    { height: 0, pressure: 101325, density: 1.225 },
    { height: 2000, pressure: 79495.2, density: 1.0065 },
    { height: 4000, pressure: 61640.2, density: 0.8191 },
  ])('holds at $height m', ({ height, pressure, density }) => {
    expectNear(pressurePa(height), pressure, 1, 'pressure');
    expectNear(airDensityKgM3(height), density, 2e-4, 'density');
  });
  it('is 1.2041 kg/m3 at 20 degC and sea level', () =>
    expectNear(airDensityKgM3(0, 20), 1.2041, 1e-4, 'density'));
});

describe('the reference generator against the approval limits', () => {
  const at = (kmh: number) => alternatorOutput(kmh, 2.155, ratedLoadOhm, referenceAlternator);
  // German approval practice for 6 V, 3 W into 12 ohm: at least 3 V at 5 and 5.7 V at 15 km/h, at most 7 V at 30 km/h.
  it('reaches 3 V at 5 km/h', () => expect(at(5).voltageV).toBeGreaterThanOrEqual(3));
  it('reaches 5.7 V at 15 km/h', () => expect(at(15).voltageV).toBeGreaterThanOrEqual(5.7));
  it('stays under 7 V at 30 km/h', () => expect(at(30).voltageV).toBeLessThanOrEqual(7));
  // JIS C 9502:2014, 7.2.
  it('is within 5 % of 6 V at 15 km/h', () => expectNear(at(15).voltageV, 6, 0.3, 'voltage'));
  it('keeps 41 % of that at 5 km/h', () =>
    expect(at(5).voltageV / at(15).voltageV).toBeGreaterThanOrEqual(0.41));
  it('keeps under 133 % of that at 30 km/h', () =>
    expect(at(30).voltageV / at(15).voltageV).toBeLessThanOrEqual(1.33));
});

describe('hub drag against published measurements', () => {
  const hub: HubModel = {
    power: { as: 'rating', ratedW: 3 },
    wheelCircumferenceM: 2.155,
    idleDragW10: 0.5,
    idleDragW30: 1.75,
  };
  it('meets its two published idle values and lies between them', () => {
    // Lathe test of five gearless hubs: 0.50 W at 10 and 1.75 W at 30 km/h for the middle one.
    expectNear(idleDragW(10, hub), 0.5, 1e-9, 'at 10 km/h');
    expectNear(idleDragW(30, hub), 1.75, 1e-9, 'at 30 km/h');
    expectNear(idleDragW(20, hub), 1.083, 1e-3, 'at 20 km/h');
  });
  it('has an efficiency of 55 to 75 % while it charges', () => {
    // Published best efficiencies of gearless hubs: 55 to 70 %, "65 % at 15 km/h".
    const efficiency = alternatorOutput(15, 2.155, 12, referenceAlternator).powerW / loadedDragW(15, hub);
    expectNear(efficiency, 0.65, 0.1, 'efficiency');
  });
});

describe('a loaded tourer on the flat', () => {
  // Independent solution of the same equations at 115 kg, 0.559 m2, 0.0077 (no published value): 0.002 km/h.
  const tourer: RideModel = {
    massKg: 115,
    dragAreaM2: 0.559,
    rollingCoefficient: 0.0077,
    airDensityKgM3: 1.225,
    drivetrainEfficiency: 0.976,
  };
  it.each([
    { watts: 75, kmh: 16.479 },
    { watts: 100, kmh: 19.067 },
    { watts: 150, kmh: 23.048 },
  ])('rides $kmh km/h at $watts W', ({ watts, kmh }) =>
    expectNear(steadySpeedKmh(watts, 0, tourer), kmh, 0.002, 'speed'),
  );
  it('loses 0.29 km/h to 3 W of drag at 100 W', () => {
    const lost = steadySpeedKmh(100, 0, tourer) - steadySpeedKmh(100, 0, tourer, () => 3);
    expectNear(lost, 0.29, 0.002, 'loss');
  });
});
