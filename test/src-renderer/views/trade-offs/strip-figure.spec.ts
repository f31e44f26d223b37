import { describe, expect, it } from 'vitest';
import type { CriterionValues } from '../../../../shared-types/comparison.ts';
import { demoSettings } from '../../../../db/demo/demo.ts';
import { stripCriteria, stripFigure } from '../../../../src-renderer/views/trade-offs/strip-figure.ts';
import { demoComparison, demoResult } from '../../support/demo-comparison.ts';

const comparison = demoComparison();
const { preferences } = demoSettings;

function withValues(changes: Partial<CriterionValues>) {
  const scenario = demoResult('demo-hub');
  return { ...scenario, values: { ...scenario.values, ...changes } };
}

describe('stripCriteria()', () => {
  it('are the core until the rider counts more', () => {
    expect(stripCriteria(preferences)).toEqual(['cost', 'grams', 'frontWheelGrams', 'margin']);
  });

  it('have no second column for the risk, which has one always', () => {
    const counted = { counted: true, weight: 0.2 };
    const all = {
      ...preferences,
      risk: { ...preferences.risk, ...counted },
      daysWithoutWall: { ...preferences.daysWithoutWall, ...counted },
    };
    expect(stripCriteria(all)).toEqual(['cost', 'grams', 'frontWheelGrams', 'margin', 'daysWithoutWall']);
  });
});

describe('stripFigure()', () => {
  const days = comparison.tour.days;

  it.each([
    [0, '0', ['a wall every night is not enough']],
    [4, '4', []],
    [days, String(days), ['needs no wall on the way']],
    [NaN, '–', []],
  ])('says what %d days without a wall mean', (daysWithoutWall, figure, qualifiers) => {
    expect(stripFigure('daysWithoutWall', withValues({ daysWithoutWall }), comparison, 'en-GB')).toEqual({
      figure,
      qualifiers,
    });
  });

  it('rounds minutes to whole ones', () => {
    expect(stripFigure('minutesLost', withValues({ minutesLost: 12.4 }), comparison, 'en-GB').figure).toBe(
      '12',
    );
  });

  it('marks a margin that fails, and how far it usually reaches', () => {
    const margin = { value: -0.2, capped: false, limitedBy: null, usual: 0.1, usualCapped: false };
    const failing = { ...demoResult('demo-hub'), margin };
    expect(stripFigure('margin', failing, comparison, 'en-GB')).toMatchObject({
      figure: '\u221220\u202f%',
      failing: true,
      reach: 0.1,
    });
  });

  it('gives money without a currency, which the head of the column names', () => {
    const { cost } = demoResult('demo-hub');
    const scenario = {
      ...demoResult('demo-hub'),
      cost: { ...cost, toBuy: { minor: 12_350, currency: 'EUR' } },
    };
    expect(stripFigure('cost', scenario, comparison, 'en-GB').figure).toBe('123.50');
  });
});
