import { beforeAll, describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../shared-types/comparison.ts';
import { legEnergies } from '../../../shared-types/leg-energy.ts';
import { drawnTours } from '../../../src-main/workbench/ground.ts';
import { scenarioJob } from '../../../src-main/workbench/scenario-job.ts';
import { demoGround, demoScenario } from '../../support/demo-ground.ts';
import { expectNear } from '../../support/near.ts';

const ids = ['demo-banks', 'demo-panel', 'demo-hub'] as const;

/** The demo with few histories, each scenario walked once for all that is asked of it. */
function comparedDemo(): ReadonlyMap<(typeof ids)[number], ScenarioResult> {
  const doJob = scenarioJob(drawnTours());
  const ground = demoGround();
  return new Map(ids.map((id) => [id, doJob({ ground, scenario: demoScenario(id) }, () => undefined)]));
}

describe('compareScenario() of the demo', { timeout: 30_000 }, () => {
  let results: ReturnType<typeof comparedDemo> = new Map();
  beforeAll(() => void (results = comparedDemo()), 30_000);
  const resultOf = (id: (typeof ids)[number]): ScenarioResult => results.get(id)!;

  it.each(ids)('has %s flat on some leg or on none', (id) => {
    const { legs, risk } = resultOf(id);
    const shares = legs.map((leg) => leg.risk.share);
    expect(Math.max(...shares)).toBeLessThanOrEqual(risk.share);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeGreaterThanOrEqual(risk.share);
    for (const { risk: ofLeg } of legs)
      expect(ofLeg.low <= ofLeg.share && ofLeg.share <= ofLeg.high).toBe(true);
  });

  it('gives by its legs what its days give: panel and hub before they spill', () => {
    for (const result of [resultOf('demo-panel'), resultOf('demo-hub')])
      legEnergies(result).forEach(({ panel, hub }, index) => {
        const { panelWh, hubWh } = result.legs[index]!;
        // The mean power of the panels is kept in single precision.
        expectNear(panel, panelWh, 1e-5 * panelWh, 'panel, Wh a day');
        expectNear(hub, hubWh, 1e-9 * hubWh, 'hub, Wh a day');
      });
  });

  it('gives the stop rules of its own kit and tour', () => {
    const { stopRules } = resultOf('demo-banks');
    expect(stopRules.banks.map(({ bank, fullWh, rows }) => [bank, Math.round(fullWh), rows.length])).toEqual([
      ['20 Ah bank, 18 W in', 60, 4],
      ['10 Ah bank, 10 W in', 28, 4],
    ]);
    // Walls after days 3, 6, 10, 14 and 20 of 24: the longest way is from the end of the plateau into the steppe.
    expect(stopRules.steps.join('\n')).toContain('from day 15 to day 20');
    expect(stopRules.banks.every(({ rows }) => rows.every(({ withSources }) => withSources === null))).toBe(
      true,
    );
  });

  it('promises nothing in them', () => {
    for (const id of ids)
      expect(resultOf(id).stopRules.steps.join('\n')).not.toMatch(/\bwill\b|\bnever\b|\bsafe\b|guarantee/);
  });
});
