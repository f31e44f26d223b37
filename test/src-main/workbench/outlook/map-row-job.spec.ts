import { describe, expect, it } from 'vitest';
import { drawnTours } from '../../../../src-main/workbench/ground.ts';
import { kitFigures } from '../../../../src-main/workbench/kit-figures.ts';
import { mapRowJob } from '../../../../src-main/workbench/outlook/map-row-job.ts';
import { mapTour } from '../../../../src-main/workbench/outlook/map-tour.ts';
import { withWallEvery } from '../../../../src-main/workbench/walls-every.ts';
import { demoGround, demoScenario, withHistories } from '../../../support/demo-ground.ts';

const histories = 20;
const days = 8;
const gapsDays = [1, 3, 10];
const scenario = demoScenario('demo-banks');
const settings = { ...withHistories(histories), stepMinutes: '60' } as const;
const ground = demoGround({ settings, tour: mapTour(demoGround().tour, 0, days) });

describe('a row of the map', () => {
  const shares: number[] = [];
  const row = mapRowJob(drawnTours())({ ground, scenario, gapsDays }, (share) => shares.push(share));

  it.each(gapsDays)('has the figures of a tour with a wall every %i days', (gapDays) => {
    const alone = demoGround({ settings, tour: withWallEvery(ground.tour, gapDays), groundId: `${gapDays}` });
    const { values, capped } = kitFigures(scenario, drawnTours()(alone), alone, () => undefined);
    const { daysWithoutWall: _, ...asAlone } = values;
    const got = row[gapsDays.indexOf(gapDays)]!;
    expect(got.values).toMatchObject(asAlone);
    expect(got.capped).toBe(capped);
  });

  it('takes the days without a wall from the gaps it tries', () => {
    // The banks carry the plan for 3 days between walls, not for 10.
    expect(row.map(({ values }) => values.margin >= 0)).toEqual([true, true, false]);
    expect(row.map(({ values }) => values.daysWithoutWall)).toEqual([3, 3, 3]);
  });

  it('says how far it is', () => {
    expect(shares.length).toBeGreaterThan(1);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  });

  it('needs no wall on a short tour', () => {
    const short = demoGround({ settings, tour: mapTour(demoGround().tour, 0, 2), groundId: 'short' });
    const [figures] = mapRowJob(drawnTours())({ ground: short, scenario, gapsDays: [3] }, () => undefined);
    expect(figures?.values.daysWithoutWall).toBe(2);
  });
});
