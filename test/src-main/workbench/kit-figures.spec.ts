import { describe, expect, it } from 'vitest';
import { demoScenarios, demoTours } from '../../../db/demo/demo.ts';
import { compareScenario } from '../../../src-main/workbench/compare-scenario.ts';
import { nightsNeeded } from '../../../src-main/workbench/days-without-wall.ts';
import { drawnTours, type ComparisonGround } from '../../../src-main/workbench/ground.ts';
import { kitFigures } from '../../../src-main/workbench/kit-figures.ts';
import { withWallEvery } from '../../../src-main/workbench/walls-every.ts';
import { demoGround, demoScenario } from '../../support/demo-ground.ts';

const ignore = (): void => undefined;
const tours = drawnTours();
const figuresOn = (ground: ComparisonGround, scenario = demoScenario('demo-banks')) =>
  kitFigures(scenario, tours(ground), ground, ignore);

/** Whether the plan is carried with a wall after every so many days, by the risk of a tour laid out so. */
function carriedWithWallEvery(gapDays: number): boolean {
  const tour = withWallEvery(demoTours[0]!, gapDays);
  const { values } = figuresOn(demoGround({ groundId: `every ${gapDays}`, tour }));
  return values.risk <= 0.1 + 1e-9;
}

describe('kitFigures()', { timeout: 30_000 }, () => {
  it.each(demoScenarios)('are those of the whole comparison for $label', (scenario) => {
    const ground = demoGround();
    const whole = compareScenario(scenario, tours(ground), ground, ignore);
    const short = figuresOn(ground, scenario);
    expect(short.values).toEqual(whole.values);
    expect(short.capped).toBe(whole.margin.capped);
  });

  it('finds the days without a wall that laying out the tour so bears out', () => {
    const { daysWithoutWall } = figuresOn(demoGround()).values;
    expect(daysWithoutWall).toBeGreaterThan(0);
    expect(daysWithoutWall).toBeLessThan(24);
    expect(carriedWithWallEvery(daysWithoutWall)).toBe(true);
    expect(carriedWithWallEvery(daysWithoutWall + 1)).toBe(false);
  });

  it('needs no wall on the way where there is sun enough', () => {
    expect(figuresOn(demoGround(), demoScenario('demo-panel')).values.daysWithoutWall).toBe(24);
  });
});

describe('nightsNeeded()', () => {
  it('is none without a need, and unknown where one every night is not enough', () => {
    expect([nightsNeeded(24, 24), nightsNeeded(5, 24), nightsNeeded(1, 24), nightsNeeded(0, 24)]).toEqual([
      ...[0, 4, 23],
      null,
    ]);
  });
});
