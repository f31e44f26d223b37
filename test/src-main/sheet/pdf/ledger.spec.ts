import { describe, expect, it } from 'vitest';
import { ledger } from '../../../../src-main/sheet/pdf/ledger.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { textsOf } from '../../../support/content-text.ts';

function cells(content: unknown): string[] {
  return textsOf(content).filter((text) => text !== '');
}

describe('ledger', () => {
  it('shows zeros for a tour without days', () => {
    const hub = scenarioFixture('hub', { days: [] });
    expect(cells(ledger(comparisonFixture({ scenarios: [hub] }))).slice(-9, -2)).toEqual(
      Array(7).fill('0.0'),
    );
  });

  it('heads each column with its flow', () => {
    expect(cells(ledger(comparisonFixture())).slice(0, 11)).toEqual([
      'Mean day: Wh at the plug, and minutes later on the road',
      'Scenario',
      'Use',
      'Wall',
      'Panel',
      'Hub',
      'Lost',
      'Spilled',
      'Unserved',
      'Later by grams',
      'by hub’s drag, on/off',
    ]);
  });

  it('gives means of the days, one decimal', () => {
    const [day] = scenarioFixture('hub').days;
    const days = [26, 29].map((hub) => ({
      ...day!,
      demand: 31,
      wall: 0,
      panel: 0,
      hub,
      lost: 3.04,
      spilled: 0,
      unserved: 1234.5,
    }));
    const hub = scenarioFixture('hub', { days });
    expect(cells(ledger(comparisonFixture({ scenarios: [hub] }))).slice(-10, -2)).toEqual([
      'Generator hub',
      '31.0',
      '0.0',
      '0.0',
      '27.5',
      '3.0',
      '0.0',
      '1,234.5',
    ]);
  });
});
