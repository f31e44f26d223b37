import { describe, expect, it } from 'vitest';
import { placeOn, stripScale } from '../../shared-types/strip-scale.ts';
import { demoComparison, demoResult } from '../src-renderer/support/demo-comparison.ts';

const comparison = demoComparison();
const limits = { weight: 0.5, satisfied: 0, unacceptable: 400 };

describe('stripScale()', () => {
  it('has a width even when every figure is the same', () => {
    const none = { ...comparison, scenarios: [] };
    const scale = stripScale(none, 'cost', { weight: 0, satisfied: 5, unacceptable: 5 });
    expect(scale.to).toBeGreaterThan(scale.from);
  });

  it('holds every value and both limits', () => {
    const scale = stripScale(comparison, 'grams', { weight: 1, satisfied: 300, unacceptable: 900 });
    expect(scale.from).toBe(300);
    expect(scale.to).toBe(Math.max(...comparison.scenarios.map(({ values }) => values.grams)));
  });

  it('holds what half of the histories carry', () => {
    const margin = { value: -0.9, capped: false, limitedBy: null, usual: 1.4, usualCapped: false };
    const reaching = {
      ...comparison,
      scenarios: [
        demoResult('demo-panel', {
          margin,
          values: { ...demoResult('demo-panel').values, margin: margin.value },
        }),
      ],
    };
    const scale = stripScale(reaching, 'margin', { weight: 1, satisfied: 0.5, unacceptable: -0.1 });
    expect([scale.from, scale.to]).toEqual([-0.9, 1.4]);
  });
});

describe('stripScale() of figures that are not known', () => {
  it('rests on those that are', () => {
    const [first, ...others] = comparison.scenarios;
    const unknown = { ...first!, values: { ...first!.values, minutesLost: NaN } };
    const scale = stripScale({ ...comparison, scenarios: [unknown, ...others] }, 'minutesLost', limits);
    expect([scale.from, scale.to]).toEqual([0, 400]);
  });
});

describe('placeOn()', () => {
  const scale = stripScale({ ...comparison, scenarios: [] }, 'cost', limits);

  it('keeps what lies beyond the axis at its end', () => {
    expect(placeOn(scale, -1000)).toBe(placeOn(scale, 0));
    expect(placeOn(scale, 1000)).toBe(placeOn(scale, 400));
  });

  it('leaves room for a whole mark at either end', () => {
    expect(placeOn(scale, 0)).toBeGreaterThan(4);
    expect(placeOn(scale, 400)).toBeLessThan(96);
  });

  it('puts the middle in the middle', () => {
    expect(placeOn(scale, 200)).toBeCloseTo(50, 9);
  });
});
