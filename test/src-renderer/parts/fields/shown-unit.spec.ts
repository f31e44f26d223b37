import { describe, expect, it } from 'vitest';
import { notUnderstood, shownField } from '../../../../src-renderer/parts/fields/shown-unit.ts';

const metric = { unit: (stored: string) => stored };
const imperial = {
  unit: (stored: string) => ({ g: 'oz', kg: 'lb', km: 'mi', m: 'ft', 'km/h': 'mph', '°C': '°F' })[stored]!,
};

describe('shownField()', () => {
  it('leaves a field as it is where its unit is the one shown', () => {
    const meta = { label: 'Mass', unit: 'g', min: 0, max: 20_000 };
    expect(shownField(meta, metric)).toEqual({ meta, unit: { stored: 'g', shown: 'g' } });
  });

  it('gives unit and range of the rider’s system, both ends converted', () => {
    const meta = { label: 'Wind', unit: 'km/h', min: -60, max: 60 };
    expect(shownField(meta, imperial).meta).toEqual({ label: 'Wind', unit: 'mph', min: -37.28, max: 37.28 });
  });

  it('takes feet for heights, and for no other lengths in m', () => {
    const length = { label: 'Wheelbase', unit: 'm', min: 0.8, max: 1.4 };
    expect(shownField(length, imperial).meta.unit).toBe('m');
    expect(shownField({ ...length, isHeight: true }, imperial).meta.unit).toBe('ft');
  });

  it.each(['W', 'Wh', 'mAh', '%/K', '% a month', undefined])('knows one system for %s', (unit) => {
    const meta = { label: 'Figure', ...(unit !== undefined && { unit }) };
    expect(shownField(meta, imperial).meta).toBe(meta);
  });

  it('reads a rating at a speed as power', () => {
    const meta = { label: 'Rating', unit: 'W at 15 km/h' };
    expect(shownField(meta, imperial)).toEqual({ meta, unit: { stored: 'W', shown: 'W' } });
  });
});

describe('notUnderstood()', () => {
  it('has an example of a quantity, and none of a bare number', () => {
    const power = shownField({ label: 'Power', unit: 'W', min: 0, max: 500 }, metric);
    expect(notUnderstood(' x ', power)).toBe(
      'a number from 0 to 500 W, for example 18 W or 0.018 kW; “x” is not understood',
    );
    expect(notUnderstood('x', shownField({ label: 'Seed' }, metric))).toBe('a number; “x” is not understood');
  });
});
