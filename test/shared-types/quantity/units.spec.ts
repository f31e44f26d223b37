import { describe, expect, it } from 'vitest';
import {
  converted,
  quantityOf,
  unitNamed,
  unitsOf,
  type Quantity,
} from '../../../shared-types/quantity/units.ts';

describe('converted()', () => {
  // NIST SP 811 (2008), Appendix B.8, all exact but the degree Fahrenheit's, which is (t/°F - 32)/1.8.
  it.each([
    [1, 'lb', 'g', 453.592_37],
    [1, 'oz', 'g', 28.349_523_125],
    [1, 'ft', 'm', 0.3048],
    [1, 'in', 'mm', 25.4],
    [1, 'yd', 'm', 0.9144],
    [1, 'mi', 'km', 1.609_344],
    [1, 'mph', 'km/h', 1.609_344],
    [1, 'm/s', 'km/h', 3.6],
    [50, '°F', '°C', 10],
    [-40, '°F', '°C', -40],
    [212, '°F', '°C', 100],
    [273.15, 'K', '°C', 0],
    [1, 'kWh', 'kJ', 3600],
    [20, 'Ah', 'mAh', 20_000],
    [1.5, 'h', 'min', 90],
  ])('makes %d %s %s: %s', (value, from, to, expected) => {
    expect(converted(value, from, to)).toBeCloseTo(expected, 9);
    expect(converted(expected, to, from)).toBeCloseTo(value, 9);
  });

  it('leaves alone what has no relatives', () => {
    expect(converted(3, 'W/m²', 'W/m²')).toBe(3);
    expect(converted(3, undefined, 'g')).toBe(3);
    expect(converted(3, 'g', 'km')).toBe(3);
  });
});

describe('unitNamed()', () => {
  it.each([
    ['mass', 'LBS', 'lb'],
    ['charge', 'ah', 'Ah'],
    ['temperature', 'F', '°F'],
    ['length', "'", 'ft'],
    ['time', 'm', 'min'],
  ] as const)('knows a %s in %j', (quantity, text, symbol) => {
    expect(unitNamed(quantity, text)?.symbol).toBe(symbol);
  });
  it('knows none of another quantity', () => expect(unitNamed('mass', 'km')).toBeNull());
});

describe('unitsOf', () => {
  it('has each symbol in one quantity only', () => {
    for (const quantity of Object.keys(unitsOf) as Quantity[]) {
      for (const { symbol } of unitsOf[quantity]) expect(quantityOf(symbol)).toBe(quantity);
    }
  });
});
