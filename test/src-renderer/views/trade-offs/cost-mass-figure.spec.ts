import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import { costMassFigure } from '../../../../src-renderer/views/trade-offs/cost-mass-figure.ts';
import { demoComparison, demoResult } from '../../support/demo-comparison.ts';

const palette = (property: string): string => property;

function result(id: string, cost: number, grams: number, margin: number): ScenarioResult {
  const plain = demoResult(id);
  return {
    ...plain,
    values: { ...plain.values, cost, grams },
    margin: { ...plain.margin, value: margin },
  };
}

function figureOf(...scenarios: readonly ScenarioResult[]) {
  return costMassFigure({ ...demoComparison(), scenarios }, 'en');
}

const banks = result('demo-banks', 0, 700, -0.3);
const panel = result('demo-panel', 84, 1060, 0.7);
const hub = result('demo-hub', 348, 1100, 0.4);

describe('price, grams and margin in one chart', () => {
  it('says which are beaten', () => {
    expect(figureOf(banks, panel, hub).title).toBe(
      'On price, grams and energy margin none beats Banks only or Panel + buffer bank; the rest are beaten',
    );
    expect(figureOf(banks, panel).title).toBe(
      'None beats another on price, grams and energy margin together',
    );
    expect(figureOf(panel, hub).title).toBe(
      'Panel + buffer bank beats all others on price, grams and energy margin',
    );
    expect(figureOf(hub).title).toBe('One scenario: nothing to set it against');
  });

  it('draws the line through the unbeaten alone, and what does not carry the plan hollow', () => {
    const { datasets } = figureOf(panel, hub, banks).draw(palette).data;
    expect(datasets.at(-1)).toMatchObject({
      data: [
        { x: 0, y: 700 },
        { x: 84, y: 1060 },
      ],
    });
    expect(datasets[2]).toMatchObject({ pointBackgroundColor: '--sheet', pointBorderColor: '--banks' });
    expect(datasets[0]).toMatchObject({ pointBackgroundColor: '--panel', pointStyle: 'rectRot' });
  });

  it('has its figures in a table', () => {
    expect(figureOf(banks, hub, panel).table().rows).toEqual([
      ['Banks only', 0, 700, -30, 'no'],
      ['Generator hub', 348, 1100, 40, 'yes'],
      ['Panel + buffer bank', 84, 1060, 70, 'no'],
    ]);
  });
});
