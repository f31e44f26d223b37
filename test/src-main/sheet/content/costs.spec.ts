import { describe, expect, it } from 'vitest';
import type { Cost } from '../../../../shared-types/comparison.ts';
import { costSection } from '../../../../src-main/sheet/content/costs.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { cellsOf, rowTexts, tableOf } from '../../../support/sheet-section.ts';

const euros = (minor: number) => ({ minor, currency: 'EUR' });

function costs(changes: Partial<Cost>) {
  const cost = { ...scenarioFixture('hub').cost, ...changes };
  return tableOf(costSection(comparisonFixture({ scenarios: [scenarioFixture('hub', { cost })] })));
}

describe('costSection', () => {
  it('is a head alone when nothing was compared', () => {
    const table = tableOf(costSection(comparisonFixture({ scenarios: [], currency: 'NOK' })));
    expect(table.rows).toEqual([]);
    expect(table.columns.map(({ head }) => head)).toEqual([
      'Scenario',
      'To buy, NOK',
      'Of it wheel building, NOK',
      'A tour-day over its life, NOK',
      'Resale in the end, NOK',
      'Nights that need a wall',
    ]);
  });

  it('says so where every night is not enough, and where no price of a night is set', () => {
    expect(rowTexts(costs({ paidNights: null }))[0]!.at(-1)).toBe('every night is not enough');
    expect(rowTexts(costs({ paidNights: { nights: 4, cost: null } }))[0]!.at(-1)).toBe(
      '4 nights, no price set',
    );
  });

  it('keeps amounts in other currencies apart', () => {
    const francs = [{ minor: 12_000, currency: 'CHF' }];
    const apart = { building: [], resale: francs, perTourDay: francs };
    const cells = cellsOf(costs({ notConverted: francs, apart, resale: euros(100) }), 0);
    const under = cells.map((cell) => cell.under);
    expect(under.slice(1)).toEqual([
      ['and 120\u00a0CHF'],
      [],
      ['and 120\u00a0CHF'],
      ['and 120\u00a0CHF'],
      [],
    ]);
  });

  it('shows what is paid now, over its life and got back', () => {
    const table = costs({
      toBuy: euros(26_400),
      building: euros(10_000),
      perTourDay: euros(35),
      resale: euros(8050),
      paidNights: { nights: 1, cost: euros(2500) },
    });
    expect(rowTexts(table)).toEqual([
      ['Generator hub', '264', '100', '0.35', '80.50', '1 night, 25\u00a0EUR'],
    ]);
  });

  it('says that a resale nobody gave is not known', () => {
    expect(rowTexts(costs({ resale: euros(0) }))[0]![4]).toBe('not known');
  });
});
