import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../shared-types/scenario.ts';
import { carriedItems } from '../../../src-main/workbench/assemble/kit.ts';
import { drawComparedTour, type ComparedTour } from '../../../src-main/workbench/compared-tour.ts';
import type { ComparisonGround } from '../../../src-main/workbench/ground.ts';
import { readyScenario, simulateScenario } from '../../../src-main/workbench/simulate-scenario.ts';
import { demoGround, demoScenario, withHistories } from '../../support/demo-ground.ts';
import { expectNear } from '../../support/near.ts';

const ignore = (): void => undefined;
const histories = 30;

function comparedTour({ tour, stations, items, settings }: ComparisonGround): ComparedTour {
  const compared = drawComparedTour(tour, stations, items, settings);
  if ('unknownStationInLeg' in compared) throw new Error('The demo names stations that are there.');
  return compared;
}

function ready(scenario: Scenario, ground = demoGround(), kitG = 0) {
  return readyScenario(scenario, comparedTour(ground), carriedItems(scenario, ground.items), kitG);
}

/** Sums over the steps of a tour. */
const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((all, value) => all + value, 0);

describe('readyScenario()', () => {
  it('lays out a tour with nothing carried: all is dark, and no wall is of use', () => {
    const { network, course, panels } = ready({ ...demoScenario('demo-banks'), kit: [] });
    expect([network.bankCount, network.portCount]).toEqual([0, 0]);
    expect([sum(panels.meanW), sum(course.hubWh)]).toEqual([0, 0]);
  });

  it('takes the same luck and use in every scenario, so that they are compared in pairs', () => {
    const compared = comparedTour(demoGround());
    const of = (id: 'demo-banks' | 'demo-hub') =>
      readyScenario(
        demoScenario(id),
        compared,
        carriedItems(demoScenario(id), demoGround().items),
        0,
      ).histories.map(({ useScale, outletIsFree }) => ({ useScale, outletIsFree }));
    expect(of('demo-hub')).toEqual(of('demo-banks'));
    expect(of('demo-banks')).toHaveLength(histories);
  });

  it('lets every history shine on the panel in its own way, and means them', () => {
    const { panels, course, histories: drawn } = ready(demoScenario('demo-panel'));
    expect(drawn.map(({ panelW }) => panelW)).toEqual(panels.byHistory);
    expect(panels.byHistory.every(({ length }) => length === course.steps)).toBe(true);
    expect(new Set(panels.byHistory.map(sum)).size).toBe(histories);
    const mean = panels.byHistory.reduce((all, watts) => all + sum(watts), 0) / histories;
    expectNear(sum(panels.meanW), mean, 1e-4 * mean, 'sum of the mean power, W');
  });

  it('gives hub power while riding and at no other time', () => {
    const { course } = ready(demoScenario('demo-hub'));
    const camp = Array.from(course.hubWh).filter((_, step) => step % course.stepsPerDay < 4);
    expect(sum(camp)).toBe(0);
    expect(sum(course.hubWh)).toBeGreaterThan(0);
  });

  it('follows the rules of the scenario', () => {
    const scenario = demoScenario('demo-banks');
    const turned = { ...scenario.rules, atWall: 'banks-first', whenShort: 'serve-all' } as const;
    expect(ready(scenario).network).toMatchObject({ banksFirst: false, rations: true });
    expect(ready({ ...scenario, rules: turned }).network).toMatchObject({ banksFirst: true, rations: false });
  });

  it('keeps cells warmer in a sleeping bag than outside', () => {
    const scenario = demoScenario('demo-banks');
    const { tour } = demoGround();
    const winter = demoGround({ tour: { ...tour, startDate: '2027-01-05' } });
    const unreachable = (cellsSleep: Scenario['rules']['cellsSleep']): number => {
      const { course } = ready({ ...scenario, rules: { ...scenario.rules, cellsSleep } }, winter);
      const { warmth, warmthPlaces, unreachableShare } = course;
      return sum(Array.from(warmth, (row) => unreachableShare[row * warmthPlaces]!));
    };
    expect(unreachable('sleeping-bag')).toBeLessThan(unreachable('outside'));
  });

  it('rides slower with a heavier kit', () => {
    const speed = (kitG: number): number =>
      ready(demoScenario('demo-banks'), demoGround(), kitG).rides[0]!.loaded.speedKmh;
    expect(speed(5000)).toBeLessThan(speed(500));
  });
});

describe('simulateScenario()', () => {
  it.each([
    { stepMinutes: '60', pointsPerDay: 24 },
    { stepMinutes: '15', pointsPerDay: 96 },
    // 6,912 steps are more than a screen can show: stored energy is kept by the hour.
    { stepMinutes: '5', pointsPerDay: 24 },
  ] as const)(
    'keeps $pointsPerDay points a day in steps of $stepMinutes min',
    ({ stepMinutes, pointsPerDay }) => {
      const ground = demoGround({ settings: { ...withHistories(20), stepMinutes } });
      const { record } = simulateScenario(ready(demoScenario('demo-banks'), ground), 0.9, ignore);
      expect(record.pointsPerDay).toBe(pointsPerDay);
      expect(record.storedWh).toHaveLength(24 * pointsPerDay * 20);
    },
  );

  it('tells of each walk, and walks every history at the planned use', () => {
    let walks = 0;
    const { record } = simulateScenario(ready(demoScenario('demo-banks')), 0.9, () => (walks += 1));
    expect(record.histories).toBe(histories);
    expect(walks).toBeGreaterThan(histories);
  });

  it('falls in margin as it is to be surer, and the usual margin is never below', () => {
    const laid = ready(demoScenario('demo-panel'));
    const sure = [0.5, 0.9, 0.99].map((confidence) => simulateScenario(laid, confidence, ignore));
    const margins = sure.map(({ margin }) => margin.value);
    expect(margins).toEqual(margins.toSorted((a, b) => b - a));
    for (const { margin, usual } of sure) expect(usual.value).toBeGreaterThanOrEqual(margin.value);
  });
});
