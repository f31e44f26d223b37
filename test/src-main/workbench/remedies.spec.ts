import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../db/demo/demo.ts';
import type { ScenarioResult } from '../../../shared-types/comparison.ts';
import { remediesOf, startTrial, trialOf } from '../../../src-main/workbench/remedies.ts';
import { crewHere } from '../../support/crew-here.ts';
import { demoGround, demoScenario } from '../../support/demo-ground.ts';

const resultsOf = (...margins: readonly number[]): ScenarioResult[] =>
  margins.map((value, at) => ({ id: demoScenarios[at]!.id, margin: { value } }) as ScenarioResult);
const banks = [demoScenario('demo-banks')];

describe('trialOf()', () => {
  it('tries nothing when a scenario carries the plan, or there is none', () => {
    expect(trialOf(demoGround(), demoScenarios, resultsOf(-0.3, 0, -0.1))).toBeNull();
    expect(trialOf(demoGround(), [], [])).toBeNull();
  });

  it('tries sources that the nearest does not carry, cheapest first, a hub with its converter', () => {
    const trial = trialOf(demoGround(), demoScenarios, resultsOf(-0.1, -0.3, -0.2))!;
    expect(trial.nearest.id).toBe('demo-banks');
    expect(trial.items.map(({ label }) => label)).toEqual([
      '6 W small panel',
      '20 W folding panel',
      '3 W generator hub wheel and Hub to USB converter',
    ]);
    const retired = demoItems.map((item) => ({ ...item, state: 'retired' as const }));
    expect(trialOf(demoGround({ items: retired }), banks, resultsOf(-0.1))!.items).toEqual([]);
  });
});

describe('remediesOf()', { timeout: 30_000 }, () => {
  it('says what one more night and each item would give the demo’s banks', async () => {
    const ground = demoGround();
    const trial = trialOf(ground, banks, resultsOf(-0.1))!;
    const figures = await startTrial(ground, trial, crewHere()).results;
    const remedies = remediesOf(trial, figures!);
    expect(remedies.scenarioId).toBe('demo-banks');
    expect(remedies.moreNight!.afterDay).toBe(trial.night!.afterDay);
    const margins = remedies.items.map(({ margin }) => margin);
    // The large panel carries the plan, the small one gives less.
    expect(margins[1]).toBeGreaterThan(0);
    expect(margins[0]).toBeLessThan(margins[1]!);
  });
});
