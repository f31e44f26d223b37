import { describe, expect, it } from 'vitest';
import type { Settings } from '../../../shared-types/settings.ts';
import type { ComparisonGround } from '../../../src-main/workbench/ground.ts';
import { keepResults, type WalkedComparison } from '../../../src-main/workbench/kept-results.ts';
import { scenarioFixture } from '../../support/comparison-fixture.ts';
import { demoGround, demoScenario } from '../../support/demo-ground.ts';

const walked: WalkedComparison = { results: [scenarioFixture('banks')], remedies: null };
const scenarios = [demoScenario('demo-banks'), demoScenario('demo-panel')];
const ground = demoGround();

/** Whether what was walked on the ground above serves another. */
function serves(changes: Partial<ComparisonGround>): boolean {
  const kept = keepResults();
  kept.keep(ground, scenarios, walked);
  return kept.of(demoGround(changes), scenarios) !== null;
}

function set(changes: Partial<Settings>): Partial<ComparisonGround> {
  return { settings: { ...ground.settings, ...changes } };
}

describe('kept results', () => {
  it('are none before anything was walked', () => {
    expect(keepResults().of(ground, scenarios)).toBeNull();
  });

  it('do not serve other scenarios, nor the same in another order', () => {
    const kept = keepResults();
    kept.keep(ground, scenarios, walked);
    expect(kept.of(ground, scenarios.slice(1))).toBeNull();
    expect(kept.of(ground, scenarios.toReversed())).toBeNull();
    expect(kept.of(ground, [{ ...scenarios[0]!, kit: [] }, scenarios[1]!])).toBeNull();
  });

  const { settings, tour, items } = ground;
  it.each<[string, Partial<ComparisonGround>]>([
    ['another tour', { tour: { ...tour, riderW: tour.riderW + 1 } }],
    [
      'another item',
      { items: items.map((item, at) => (at === 0 ? { ...item, massG: item.massG + 1 } : item)) },
    ],
    ['more sun', { sunScale: 1.1 }],
    ['another seed', set({ sky: { ...settings.sky, seed: settings.sky.seed + 1 } })],
    ['another confidence', set({ risk: { ...settings.risk, confidence: settings.risk.confidence - 0.1 } })],
    ['another step', set({ stepMinutes: '30' })],
    ['another currency', set({ currency: 'NOK' })],
  ])('do not serve %s', (_, changes) => {
    expect(serves(changes)).toBe(false);
  });

  it.each<[string, Partial<ComparisonGround>]>([
    ['the same ground read anew', { groundId: 'another' }],
    [
      'other weights',
      set({ preferences: { ...settings.preferences, cost: { ...settings.preferences.cost, weight: 0.01 } } }),
    ],
    ['another theme', set({ theme: 'dark' })],
  ])('serve %s', (_, changes) => {
    expect(serves(changes)).toBe(true);
  });

  it('are those of the last comparison alone', () => {
    const kept = keepResults();
    const next = demoGround({ sunScale: 1.1 });
    kept.keep(ground, scenarios, walked);
    kept.keep(next, scenarios, { ...walked, results: [] });
    expect(kept.of(ground, scenarios)).toBeNull();
    expect(kept.of(next, scenarios)).toEqual({ results: [], remedies: null });
  });
});
