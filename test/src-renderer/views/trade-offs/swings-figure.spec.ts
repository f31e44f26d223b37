import { describe, expect, it } from 'vitest';
import { drawSwings } from '../../../../src-renderer/views/trade-offs/swings-chart.ts';
import { leftOutText, swingsFigure } from '../../../../src-renderer/views/trade-offs/swings-figure.ts';
import { swingsFinding } from '../../../../shared-types/swings-finding.ts';
import { whyNoSwings } from '../../../../shared-types/why-no-swings.ts';
import { comparisonFixture } from '../../../support/comparison-fixture.ts';
import { scoredRow } from '../../../support/score-fixture.ts';
import { swingFixture, swingsFixture, wallsFixture } from '../../../support/swings-fixture.ts';

const plain = (text: string): string => text.replaceAll(/[\u00a0\u202f]/gu, ' ');
const swings = swingsFixture();

describe('swingsFinding()', () => {
  it('says what decides, and where', () => {
    expect(plain(swingsFinding(swings))).toBe(
      'Days between walls decides: at 2 days or fewer Banks only leads; nothing else in its range does',
    );
  });

  it('names the widest of several and counts the others', () => {
    const sun = swingFixture({ flips: [{ side: 'below', value: 0.9, leaderId: 'demo-hub', because: null }] });
    const two = swingsFixture({ swings: [wallsFixture, sun] });
    expect(swingsFinding(two)).toMatch(/^Days between walls decides: .*; one other assumption may too$/u);
    const three = swingsFixture({ swings: [wallsFixture, sun, { ...sun, id: 'price' }] });
    expect(swingsFinding(three)).toMatch(/; 2 other assumptions may too$/u);
  });

  it('says that nothing does, what comes nearest, and that a tie is one', () => {
    expect(swingsFinding(swingsFixture({ swings: [swingFixture()] }))).toBe(
      'Nothing in its range changes the answer: Panel + buffer bank stays first; sun moves its lead most',
    );
    expect(swingsFinding(swingsFixture({ level: true }))).toContain('are level as planned');
    expect(swingsFinding(swingsFixture({ swings: [] }))).toContain('Nothing compared here');
  });
});

describe('the figure of the swings', () => {
  it('has a row for each bar, with the source of its range', () => {
    const { columns, rows } = swingsFigure(swings).table();
    expect(rows.map((row) => row.length)).toEqual([columns.length, columns.length]);
    expect(rows[0]).toContain('first and second change places');
    expect(rows[0]).toContain('the score');
    expect(rows[1]).toContain('none in range');
    expect(rows[1]).toContain('the order holds');
    expect(rows[1]).toContain('common practice, no source');
  });

  it('tells of a limit where one turns the order', () => {
    const because = 'Hub costs 420 EUR, your limit is 400 EUR';
    const price = swingFixture({ flips: [{ side: 'above', value: 1.1, leaderId: null, because }] });
    const [row] = swingsFigure(swingsFixture({ swings: [price] })).table().rows;
    expect(row).toContain(because);
  });

  it('draws each bar from the lead of the plan to those of its ends, widest first', () => {
    const { data, options } = drawSwings(swings, () => 'rgb(1, 2, 3)');
    expect(data.datasets.map((series) => series.data)).toEqual([
      [-9, 16],
      [70, 30],
    ]);
    expect(data.datasets.map((series) => 'base' in series && series.base)).toEqual([30, 30]);
    expect(options?.indexAxis).toBe('y');
    expect(data.labels?.map(plain)).toEqual([
      'Days between walls: at 2 days or fewer Banks only leads',
      'Sun: none in range',
    ]);
  });

  it('cuts a label that would leave the bars no room', () => {
    const scenarios = swings.scenarios.map((each) => ({
      ...each,
      label: 'Scenario with a long name '.repeat(3),
    }));
    const { data } = drawSwings(swingsFixture({ scenarios }), () => 'rgb(1, 2, 3)');
    expect(data.labels?.every((label) => label.length <= 60)).toBe(true);
  });

  it('names what was left out and why', () => {
    expect(leftOutText(swings)).toBeNull();
    const leftOut = [{ name: 'Sun', why: 'no scenario compared carries a panel' }];
    expect(leftOutText(swingsFixture({ leftOut }))).toBe(
      'Left out: Sun (no scenario compared carries a panel).',
    );
  });
});

describe('whyNoSwings()', () => {
  it('has nothing to say of two scenarios within the limits', () => {
    expect(whyNoSwings(comparisonFixture())).toBeNull();
  });

  it('says so where there is no order, or no first place', () => {
    expect(whyNoSwings({ scores: [scoredRow('a', 0.5)] })).toContain('one scenario');
    const out = { excludedBy: [{ limit: 'grams', text: 'weighs 900 g, your limit is 800 g' }] } as const;
    const [a, b] = [scoredRow('a', 0.5, out), scoredRow('b', 0.4, out)];
    expect(whyNoSwings({ scores: [a, b] })).toContain('limits leave out every scenario');
    expect(whyNoSwings({ scores: [scoredRow('a', 0.5), b] })).toBeNull();
  });
});
