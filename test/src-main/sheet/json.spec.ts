import { describe, expect, it } from 'vitest';
import { comparisonJson } from '../../../src-main/sheet/json.ts';
import { comparisonFixture, scenarioFixture } from '../../support/comparison-fixture.ts';
import { matterFixture } from '../../support/sheet-matter.ts';

/** JSON has no signed zero. */
function unsigned(value: unknown): unknown {
  if (typeof value === 'number') return value + 0;
  if (Array.isArray(value)) return value.map(unsigned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, unsigned(each)]));
}

describe('comparisonJson', () => {
  it('writes a figure that is not known as null, and only such a figure', () => {
    const { values } = scenarioFixture('hub');
    const unknown = { ...values, minutesLost: Number.NaN, risk: Infinity };
    const comparison = comparisonFixture({ scenarios: [scenarioFixture('hub', { values: unknown })] });
    const text = comparisonJson(matterFixture({ comparison }));
    expect(text).not.toMatch(/NaN|Infinity/u);
    const known = { ...values, minutesLost: null, risk: null };
    expect(JSON.parse(text)).toMatchObject({ comparison: { scenarios: [{ values: known }] } });
  });

  it('says why there is nothing to tell of what would change the answer', () => {
    const why = 'With one scenario there is no order to change.';
    expect(JSON.parse(comparisonJson(matterFixture({ swings: { why } })))).toMatchObject({ swings: { why } });
  });

  it('keeps labels as they are, whatever signs they hold', () => {
    const label = '</script>\u2028"\\\u0000電';
    const comparison = comparisonFixture({ scenarios: [scenarioFixture('hub', { label })] });
    expect(JSON.parse(comparisonJson(matterFixture({ comparison })))).toMatchObject({
      comparison: { scenarios: [{ label }] },
    });
  });

  it('reads back as the comparison, its swings and what they were made from, unrounded', () => {
    const matter = matterFixture();
    expect(JSON.parse(comparisonJson(matter))).toEqual({
      format: 'chargewright-comparison',
      formatVersion: 1,
      program: 'Chargewright 0.1.0',
      madeOn: '2027-04-18',
      comparison: unsigned(matter.comparison),
      swings: matter.swings,
      inputs: matter.inputs,
    });
  });

  it('is a text file: its last line is ended, and it is the same for the same matter', () => {
    expect(comparisonJson(matterFixture()).endsWith('}\n')).toBe(true);
    expect(comparisonJson(matterFixture())).toBe(comparisonJson(matterFixture()));
  });
});
