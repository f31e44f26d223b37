import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { formatNumber, moneyText } from '../../../shared-types/figures.ts';
import { display } from '../../../src-renderer/state/display.svelte.ts';

beforeEach(() => display.choose({ units: 'metric', numberFormat: 'en-GB' }));
afterEach(() => display.choose({ units: 'metric', numberFormat: 'system' }));

describe('display', () => {
  it('shows what is stored as it is where the rider reads metric units', () => {
    expect(display.mass(1540)).toBe('1,540\u00a0g');
    expect(display.unit('km/h')).toBe('km/h');
    expect(display.figure(12.34, 'km', { digits: 1 })).toBe('12.3');
  });

  // By the pound, foot and mile of 1959 (NIST SP 811): 28.3495 g, 0.3048 m, 1.609344 km.
  it('shows ounces, miles, feet and degrees Fahrenheit where these are read', () => {
    display.choose({ units: 'imperial', numberFormat: 'en-GB' });
    expect(display.mass(1540)).toBe('54.3\u00a0oz');
    expect(display.mass(-100, { signed: true })).toBe('\u22123.5\u00a0oz');
    expect(display.distance(100)).toBe('62.1\u00a0mi');
    expect(display.height(1000)).toBe('3,281\u00a0ft');
    expect(display.speed(20)).toBe('12\u00a0mph');
    expect(display.temperature(-10)).toBe('14\u00a0°F');
  });

  it('makes every figure that names no locale follow the number format', () => {
    display.choose({ units: 'metric', numberFormat: 'de-DE' });
    expect(formatNumber(1234.5, { digits: 1 })).toBe('1.234,5');
    expect(moneyText({ minor: 123_450, currency: 'TND' })).toBe('123,450\u00a0TND');
    expect(formatNumber(1234.5, { digits: 1, locale: 'en-GB' })).toBe('1,234.5');
  });
});
