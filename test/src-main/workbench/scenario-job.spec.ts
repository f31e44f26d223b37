import { describe, expect, it } from 'vitest';
import { demoScenarios } from '../../../db/demo/demo.ts';
import {
  expectedWalks,
  scenarioWorker,
  type ComparisonGround,
} from '../../../src-main/workbench/scenario-job.ts';
import { demoGround, demoScenario, withHistories } from '../../support/demo-ground.ts';

const ignore = (): void => undefined;
const job = (ground: ComparisonGround, scenario = demoScenario('demo-banks')) => ({ ...ground, scenario });

/** The demo's tour without its last leg. */
function shorter(runId: string): ComparisonGround {
  const { tour } = demoGround();
  return demoGround({ runId, tour: { ...tour, legs: tour.legs.slice(0, 2) } });
}

describe('scenarioWorker()', { timeout: 30_000 }, () => {
  it('names the leg whose station is not known', () => {
    const lost = demoGround({ stations: [] });
    expect(() => scenarioWorker()(job(lost), ignore)).toThrow('Leg 1 names a climate station');
  });

  it('does a job after one that it could not do', () => {
    const doJob = scenarioWorker();
    expect(() => doJob(job(demoGround({ stations: [] })), ignore)).toThrow();
    expect(doJob(job(demoGround()), ignore)).toMatchObject({ id: 'demo-banks' });
  });

  it('gives the same whether the drawn tour is shared or drawn for each scenario', () => {
    const shared = scenarioWorker();
    for (const scenario of demoScenarios) {
      const ofOne = job(demoGround(), scenario);
      expect(shared(ofOne, ignore)).toEqual(scenarioWorker()(ofOne, ignore));
    }
  });

  it('draws the tour of another run anew', () => {
    const doJob = scenarioWorker();
    expect(doJob(job(demoGround()), ignore).days).toHaveLength(24);
    expect(doJob(job(shorter('another')), ignore).days).toHaveLength(15);
  });

  it('takes a job, and gives a result, that can pass between threads', () => {
    const ground = job(demoGround());
    const result = scenarioWorker()(structuredClone(ground), ignore);
    expect(structuredClone(result)).toEqual(scenarioWorker()(ground, ignore));
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

describe('expectedWalks()', { timeout: 30_000 }, () => {
  it.each(['demo-banks', 'demo-panel', 'demo-hub'] as const)('is about what %s takes', (id) => {
    const ground = demoGround({ settings: withHistories(200) });
    let walks = 0;
    scenarioWorker()(job(ground, demoScenario(id)), () => (walks += 1));
    // As a rule: how often the margins are tried hangs on the tour. A bar twice too fast or slow still tells a rider something.
    expect(walks / expectedWalks(ground)).toBeGreaterThan(0.5);
    expect(walks / expectedWalks(ground)).toBeLessThan(2);
  });
});
