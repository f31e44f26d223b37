import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addPanelPower, lightStepsPerDay } from '../../../../src-main/model/flow/panel-power.ts';
import type { PanelPlacement } from '../../../../src-main/model/flow/panel-schedule.ts';
import { createSky } from '../../../../src-main/model/sun/day-sky.ts';
import { allDayIn } from '../../../../src-main/workbench/assemble/sky.ts';
import { expectNear } from '../../../support/near.ts';
import { anyDate, anyLatDeg } from '../../../support/random-sun.ts';
import { climateAt, evenSkies, laidOn, panel20, skiesOf, sunAt } from '../../../support/sun-fixture.ts';

const day = { ridingHours: 6, stops: [{ label: 'Lunch', hours: 1 }] };
const placed: PanelPlacement = {
  whileRiding: { as: 'flat' },
  atStops: { as: 'aimed' },
  inCamp: null,
  rackFactor: 0.5,
  onlyAtStops: [],
  campFromH: 0,
  campToH: 24,
};
const wh = (watts: Float64Array, stepsPerDay = 48): number =>
  (watts.reduce((sum, each) => sum + each, 0) * 24) / stepsPerDay;

describe('addPanelPower() over histories', () => {
  const sun = sunAt(climateAt(45, 0.55), '2027-06-10', 3);
  /** Mean of all histories, Wh. */
  const meanWh = (over = sun, panels = [panel20], placement = placed): number => {
    const skies = skiesOf(over);
    const laid = laidOn(over, panels, placement, day);
    const watts = new Float64Array(over.airDegC.length);
    for (let history = 0; history < skies.histories; history += 1)
      addPanelPower(
        laid,
        over,
        skies,
        history,
        panels.map(() => watts),
        createSky(48),
      );
    return wh(watts) / skies.histories;
  };
  const power = (panels = [panel20], placement = placed): number => meanWh(sun, panels, placement);

  it('is nothing of a panel left at home or packed away', () => {
    expect(power([])).toBe(0);
    expect(power([panel20], { ...placed, whileRiding: null, atStops: null })).toBe(0);
  });

  it('is twice as much from two panels', () => {
    expectNear(power([panel20, panel20]), 2 * power(), 1e-9, 'Wh');
  });

  it('falls with the shade of rider and bags', () => {
    expect(power([panel20], { ...placed, rackFactor: 0.2 })).toBeLessThan(power());
    expect(power([panel20], { ...placed, rackFactor: 0, atStops: null })).toBe(0);
  });

  it('is less where the panel comes out at named stops only', () => {
    expect(power([panel20], { ...placed, onlyAtStops: ['Dinner'] })).toBeLessThan(power());
    expectNear(power([panel20], { ...placed, onlyAtStops: ['Lunch'] }), power(), 1e-9, 'Wh');
  });

  it('falls behind where the sun is low', () => {
    // Common practice, no source: under half of what it gives in summer further south.
    const north = sunAt(climateAt(62, 0.4), '2027-11-10', 3);
    expect(meanWh(north)).toBeLessThan(0.5 * power());
  });
});

describe('addPanelPower()', () => {
  const oneDay = (lat: number, date: string, clearness: number, placement: PanelPlacement): number => {
    const sun = sunAt(climateAt(lat), date, 1);
    const out = new Float64Array(48);
    addPanelPower(
      laidOn(sun, [panel20], placement, day),
      sun,
      evenSkies(sun, clearness),
      0,
      [out],
      createSky(48),
    );
    expect(out.every((watts) => Number.isFinite(watts) && watts >= 0 && watts <= panel20.outputW)).toBe(true);
    return wh(out);
  };

  it('never gives less in a clearer sky', () => {
    const cool = fc.constantFrom(placed, allDayIn({ as: 'flat' }), allDayIn({ as: 'aimed' }));
    fc.assert(
      fc.property(
        anyLatDeg,
        anyDate,
        fc.double({ min: 0, max: 0.75, noNaN: true }),
        cool,
        (lat, date, k, placement) => {
          // What would pass the cloudless sky is held at it, which moves light between the steps of the day by a hair.
          expect(oneDay(lat, date, k + 0.05, placement)).toBeGreaterThanOrEqual(
            oneDay(lat, date, k, placement) * (1 - 1e-4) - 1e-6,
          );
        },
      ),
    );
  });

  it('is reproduced by the closed form on a flat panel without thresholds', () => {
    // No start threshold, no heat, no port limit: Wh = rating x kWh/m2 x regulator.
    const plain = { ...panel20, startWm2: 0, temperatureCoefficientPerK: 0, outputW: 1000 };
    const sun = sunAt(climateAt(45), '2027-05-20', 1);
    const out = new Float64Array(48);
    addPanelPower(laidOn(sun, [plain]), sun, evenSkies(sun, 0.5), 0, [out], createSky(48));
    const kWhM2 = (0.5 * sun.courses[0]!.extraterrestrialWhM2) / 1000;
    expectNear(wh(out), 20 * kWhM2 * 0.85, 0.002 * 20 * kWhM2, 'Wh');
  });

  it('reads the history that is asked for', () => {
    const sun = sunAt(climateAt(45), '2027-05-20', 2);
    const skies = { days: 2, histories: 2, clearness: Float64Array.of(0.1, 0.1, 0.7, 0.1) };
    const [dull, bright] = [0, 1].map((history) => {
      const out = new Float64Array(96);
      addPanelPower(laidOn(sun, [panel20]), sun, skies, history, [out], createSky(48));
      return out;
    });
    expect(wh(bright!.slice(0, 48))).toBeGreaterThan(3 * wh(dull!.slice(0, 48)));
    expect([...bright!.slice(48)]).toEqual([...dull!.slice(48)]);
  });
});

describe('lightStepsPerDay()', () => {
  it.each([
    { stepMinutes: 5, lightMinutes: 5 },
    { stepMinutes: 15, lightMinutes: 15 },
    { stepMinutes: 20, lightMinutes: 10 },
    { stepMinutes: 60, lightMinutes: 15 },
  ])(
    'reckons light every $lightMinutes minutes for steps of $stepMinutes',
    ({ stepMinutes, lightMinutes }) => {
      expect(lightStepsPerDay(1440 / stepMinutes)).toBe(1440 / lightMinutes);
    },
  );
});
