import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings, demoTours } from '../../../../db/demo/demo.ts';
import type { Scenario } from '../../../../shared-types/scenario.ts';
import type { Preferences } from '../../../../shared-types/settings.ts';
import type { Tour } from '../../../../shared-types/tour.ts';
import { drawnTours } from '../../../../src-main/workbench/ground.ts';
import { kitFigures } from '../../../../src-main/workbench/kit-figures.ts';
import { assumptionRanges } from '../../../../src-main/workbench/outlook/assumptions-range.ts';
import type { SwingInputs } from '../../../../src-main/workbench/outlook/assumption-range.ts';
import { subjectOf } from '../../../../src-main/workbench/outlook/swing-subject.ts';
import { demoGround, demoScenario } from '../../../support/demo-ground.ts';
import { expectNear } from '../../../support/near.ts';

const tour = demoTours[0]!;
const inputs: SwingInputs = { ground: demoGround(), scenarios: demoScenarios };
const on = (changes: Partial<Tour>, scenarios: readonly Scenario[] = demoScenarios): SwingInputs => ({
  ground: demoGround({ tour: { ...tour, ...changes } }),
  scenarios,
});
const range = (id: string) => assumptionRanges.find((each) => each.id === id)!;
const leftOut = (of: SwingInputs, preferences: Preferences = demoSettings.preferences): readonly string[] =>
  subjectOf(of, preferences).leftOut.map(({ id }) => id);

describe('the assumptions', () => {
  it('all matter on the demo', () => expect(leftOut(inputs)).toEqual([]));

  it.each(assumptionRanges)('$name has its start inside its range, low before high', ({ span }) => {
    const { low, high, base, start } = span(inputs);
    expect(low).toBeLessThan(high);
    expect(start).toBeGreaterThanOrEqual(low);
    expect(start).toBeLessThanOrEqual(high);
    expect(base === null || base === start).toBe(true);
  });

  it.each(assumptionRanges)('$name says where its range is from, and why it is left out', (each) => {
    expect([each.source, each.absent].every((text) => text.length > 0)).toBe(true);
  });

  it('leaves out what no kit has', () => {
    const [banks, , hub] = demoScenarios as [Scenario, Scenario, Scenario];
    expect(leftOut(on({}, [banks, hub]))).toEqual(['sun', 'rack-factor', 'persistence']);
    expect(leftOut(on({}, [banks, { ...banks, id: 'again' }]))).toContain('rider-power');
    expect(leftOut(on({}, [banks, { ...banks, id: 'again' }]))).toContain('price');
  });

  it('takes the rider power in where minutes count, hub or not', () => {
    const [banks] = demoScenarios as [Scenario];
    const timed = {
      ...demoSettings.preferences,
      minutesLost: { ...demoSettings.preferences.minutesLost, counted: true },
    };
    expect(leftOut(on({}, [banks, { ...banks, id: 'again' }]), timed)).not.toContain('rider-power');
  });

  it('leaves out what the tour does not have', () => {
    const [first] = tour.legs;
    expect(leftOut(on({ legs: [{ ...first!, dayStops: [] }] }))).toEqual(['outlet-luck']);
    expect(leftOut(on({ legs: [{ ...first!, days: 1 }] }))).toEqual(['days-between-walls']);
    const atHome = demoItems.filter(({ kind }) => kind === 'device').map(({ id }) => id);
    expect(leftOut(on({ leftAtHome: atHome }))).toContain('device-use');
  });
});

describe('days between walls', () => {
  it('start from the mean gap of the plan, and go no further than the tour', () => {
    // 24 days with walls after days 3, 6, 10, 14 and 20: six stretches of 4 in the mean.
    expect(range('days-between-walls').span(inputs)).toMatchObject({
      low: 1,
      high: 14,
      start: 4,
      base: null,
    });
    const short = on({ legs: [{ ...tour.legs[0]!, days: 5 }] });
    // One post after day 3 parts 5 days in two.
    expect(range('days-between-walls').span(short)).toMatchObject({ high: 5, start: 3 });
  });
});

describe('the rack factor', () => {
  const withFactor = (id: string, rackFactor: number): Scenario => ({
    ...demoScenario('demo-panel'),
    id,
    placement: { ...demoScenario('demo-panel').placement, rackFactor },
  });

  it('takes a plan beyond its range along', () => {
    const span = range('rack-factor').span(on({}, [withFactor('a', 0.3), demoScenario('demo-hub')]));
    expect(span).toMatchObject({ low: 0.3, base: 0.3, high: 0.8 });
  });

  it('is no single point where scenarios have their own', () => {
    const span = range('rack-factor').span(on({}, [withFactor('a', 0.5), withFactor('b', 0.7)]));
    expect(span.base).toBeNull();
    expectNear(span.start, 0.6, 1e-12, 'start');
  });
});

describe('device use', () => {
  it('is reckoned to what a plan with so much more use would be walked to', () => {
    const tours = drawnTours();
    const figures = (of: SwingInputs, groundId: string) => {
      const ground = { ...of.ground, groundId };
      return kitFigures(demoScenario('demo-hub'), tours(ground), ground, () => undefined);
    };
    const plan = figures(inputs, 'plan');
    const walked = figures(range('device-use').at(inputs, 1.25), 'more').values.margin;
    const reckoned = range('device-use').reckoned!(plan, 1.25)!.margin!;
    // The margin is found to 0.0025 of use; devices that wait when stores run short look at the plan, not at the factor.
    expectNear(reckoned, walked, 0.02, 'margin with a quarter more use');
  });

  it('is walked where the margin of the plan is above all that is tried', () => {
    const capped = { scenarioId: 'a', capped: true, values: { ...emptyValues, margin: 3 } };
    expect(range('device-use').reckoned!(capped, 1.25)).toBeNull();
    expect(range('device-use').reckoned!({ ...capped, capped: false }, 0.75)).toEqual({ margin: 3 });
  });
});

const emptyValues = {
  ...{ cost: 0, grams: 0, frontWheelGrams: 0, margin: 0, risk: 0, minutesLost: 0, daysWithoutWall: 0 },
};
