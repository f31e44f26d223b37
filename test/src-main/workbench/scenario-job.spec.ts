import { describe, expect, it } from 'vitest';
import { demoScenarios } from '../../../db/demo/demo.ts';
import { drawnTours, type ComparisonGround } from '../../../src-main/workbench/ground.ts';
import { scenarioJob } from '../../../src-main/workbench/scenario-job.ts';
import { demoGround, demoScenario, withHistories } from '../../support/demo-ground.ts';

const ignore = (): void => undefined;
const job = (ground: ComparisonGround, scenario = demoScenario('demo-banks')) => ({ ground, scenario });

/** The demo's tour without its last leg. */
function shorter(groundId: string): ComparisonGround {
  const { tour } = demoGround();
  return demoGround({ groundId, tour: { ...tour, legs: tour.legs.slice(0, 2) } });
}

describe('scenarioJob()', { timeout: 30_000 }, () => {
  it('names the leg whose station is not known', () => {
    const lost = demoGround({ stations: [] });
    expect(() => scenarioJob(drawnTours())(job(lost), ignore)).toThrow('Leg 1 names a climate station');
  });

  it('does a job after one that it could not do', () => {
    const doJob = scenarioJob(drawnTours());
    expect(() => doJob(job(demoGround({ stations: [] })), ignore)).toThrow();
    expect(doJob(job(demoGround()), ignore)).toMatchObject({ id: 'demo-banks' });
  });

  it('gives the same whether the drawn tour is shared or drawn for each scenario', () => {
    const shared = scenarioJob(drawnTours());
    for (const scenario of demoScenarios) {
      const ofOne = job(demoGround(), scenario);
      expect(shared(ofOne, ignore)).toEqual(scenarioJob(drawnTours())(ofOne, ignore));
    }
  });

  it('draws the tour of another ground anew', () => {
    const doJob = scenarioJob(drawnTours());
    expect(doJob(job(demoGround()), ignore).days).toHaveLength(24);
    expect(doJob(job(shorter('another')), ignore).days).toHaveLength(15);
  });

  it('takes a job, and gives a result, that can pass between threads', () => {
    const ground = job(demoGround());
    const result = scenarioJob(drawnTours())(structuredClone(ground), ignore);
    expect(structuredClone(result)).toEqual(scenarioJob(drawnTours())(ground, ignore));
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

describe('the progress of a scenario', { timeout: 30_000 }, () => {
  it.each(['demo-banks', 'demo-panel', 'demo-hub'] as const)('goes up, and not at once, for %s', (id) => {
    const ground = demoGround({ settings: withHistories(200) });
    const shares: number[] = [];
    scenarioJob(drawnTours())(job(ground, demoScenario(id)), (share) => shares.push(share));
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    // As a rule: how often the margins are tried hangs on the tour. A bar twice too fast or slow still tells a rider something.
    expect(shares.at(-1)).toBeGreaterThan(0.5);
    expect(shares[Math.floor(shares.length / 2)]).toBeLessThan(0.99);
  });
});
