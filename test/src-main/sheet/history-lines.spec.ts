import { describe, expect, it } from 'vitest';
import { historyLines, limitText, plannedTexts } from '../../../src-main/sheet/history-lines.ts';
import { comparisonFixture, scenarioFixture } from '../../support/comparison-fixture.ts';

describe('plannedTexts', () => {
  it('leaves out what is hardly spilled', () => {
    const texts = plannedTexts(scenarioFixture('hub', { spilledShare: 0.004 }), 200);
    expect(texts.join()).not.toContain('spilled');
  });

  it('says how much is spilled, and of whose', () => {
    expect(plannedTexts(scenarioFixture('hub', { spilledShare: 0.28 }), 200)).toContain(
      '28\u202f% of what the hub gives is spilled',
    );
  });
});

describe('limitText', () => {
  it('says when no limit was found', () => {
    const { margin } = scenarioFixture('hub');
    expect(limitText({ ...margin, limitedBy: null })).toBe('no limit found');
    expect(limitText(margin)).toBe('limited by Phone, day\u00a019');
  });
});

describe('historyLines', () => {
  it('has a line for each scenario, and none for none', () => {
    expect(historyLines(comparisonFixture())).toHaveLength(3);
    expect(historyLines(comparisonFixture({ scenarios: [] }))).toEqual([]);
  });
});
