import { describe, expect, it } from 'vitest';
import { demoScenarios } from '../../../../db/demo/demo.ts';
import type { Crew, Watch } from '../../../../src-main/workbench/crew.ts';
import type { JobInput, JobOutput } from '../../../../src-main/workbench/jobs.ts';
import { drawMap } from '../../../../src-main/workbench/outlook/draw-map.ts';
import type { MapPlan } from '../../../../src-main/workbench/outlook/map-grid.ts';
import { demoGround } from '../../../support/demo-ground.ts';

const plan: MapPlan = { days: [2, 8], gapsDays: [1, 3], histories: 20, stepMinutes: '60' };
const twoScenarios = demoScenarios.slice(0, 2);

/** A crew that does nothing but keep what it was given. */
function idleCrew() {
  const given: { inputs: readonly JobInput<'map-row'>[]; watch: Watch<JobOutput<'map-row'>> | null } = {
    inputs: [],
    watch: null,
  };
  const crew: Crew = {
    size: 2,
    start: (_, inputs, watch) => {
      given.inputs = inputs as readonly JobInput<'map-row'>[];
      given.watch = watch as Watch<JobOutput<'map-row'>>;
      return { results: Promise.resolve(null), cancel: () => undefined };
    },
    close: () => undefined,
  };
  return { crew, given };
}

function drawn() {
  const { crew, given } = idleCrew();
  const shares: number[] = [];
  const subject = { ground: demoGround(), leg: 0, scenarios: twoScenarios };
  const run = drawMap(subject, plan, crew, (share) => shares.push(share));
  return { ...given, watch: given.watch!, shares, run };
}

describe('the jobs of a map', () => {
  it('come longest first, those of a length on the same ground', () => {
    const { inputs } = drawn();
    expect(inputs.map(({ ground, scenario }) => `${ground.tour.legs[0]!.days} ${scenario.id}`)).toEqual([
      '8 demo-banks',
      '8 demo-panel',
      '2 demo-banks',
      '2 demo-panel',
    ]);
    const ids = inputs.map(({ ground }) => ground.groundId);
    expect([ids[0] === ids[1], ids[1] === ids[2], ids[2] === ids[3]]).toEqual([true, false, true]);
  });

  it('walk as many histories as the plan says, in its steps', () => {
    for (const { ground } of drawn().inputs)
      expect([ground.settings.sky.histories, ground.settings.stepMinutes]).toEqual([20, '60']);
  });

  it('try one gap without a wall on the way', () =>
    expect(drawn().inputs.map(({ gapsDays }) => gapsDays)).toEqual([[1, 3], [1, 3], [1, 3], [1, 3]])); // prettier-ignore

  it('come to nothing when they are cancelled', async () => expect(await drawn().run.results).toBeNull());
});

describe('the progress of a map', () => {
  it('counts rows by their days, those under way in part, and never goes back', () => {
    const { watch, shares } = drawn();
    // 20 days in all: two rows of 8, two of 2.
    watch.onProgress(0.25 * 0.5);
    watch.onResult?.([], 0);
    watch.onProgress(0.25);
    watch.onResult?.([], 2);
    watch.onProgress(0.25 * 2.9);
    watch.onResult?.([], 1);
    watch.onProgress(0.25 * 3);
    watch.onResult?.([], 3);
    watch.onProgress(1);
    // By hand: 4, 8, 8 + 2 + 0.9 * 8, 18, 20 of 20.
    const expected = [0.2, 0.4, 0.86, 0.9, 1];
    expect(shares).toHaveLength(expected.length);
    expected.forEach((share, at) => expect(shares[at]).toBeCloseTo(share, 9));
  });

  it('stays where it was when a row turns out shorter than the first under way', () => {
    const { watch, shares } = drawn();
    watch.onResult?.([], 0);
    watch.onProgress(0.25 * 2.8);
    watch.onResult?.([], 1);
    watch.onProgress(0.25 * 2.8);
    expect(shares[1]).toBe(shares[0]);
    expect(shares[0]).toBeLessThanOrEqual(1);
  });
});
