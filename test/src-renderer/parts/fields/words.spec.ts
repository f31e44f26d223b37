import { describe, expect, it } from 'vitest';
import { rangeText } from '../../../../shared-types/field.ts';
import {
  entryName,
  groupLabel,
  inPercent,
  optionLabel,
} from '../../../../src-renderer/parts/fields/words.ts';

describe('words of groups and options', () => {
  it('shows the bare name of what has no words yet', () => {
    expect([groupLabel('spareWheel'), optionLabel('other')]).toEqual(['spareWheel', 'other']);
  });

  it('names the entries of a list by their place', () => {
    expect([entryName('points', 1), entryName('outputs', 0), entryName('dayStops', 2)]).toEqual([
      'Point 2 of the curve',
      'Outlet 1',
      'Stop 3',
    ]);
    expect(entryName('spareWheels', 0)).toBe('spareWheels 1');
  });

  it('has words where the schemas have none', () => {
    expect([groupLabel('price'), optionLabel('mah')]).toEqual(['Price of one', 'Milliampere-hours']);
  });
});

describe('inPercent()', () => {
  it('turns range, step and unit along with the label', () => {
    const shown = inPercent({ label: 'Efficiency in', min: 0.3, max: 1, step: 0.01 });
    expect(shown).toEqual({ label: 'Efficiency in', unit: '%', min: 30, max: 100, step: 1 });
    expect(rangeText(shown)).toBe('a number from 30 to 100\u202f%');
  });

  it('turns the shares a hint names, and nothing else', () => {
    const { hint } = inPercent({ label: 'Health', hint: '1 when new, often 0.85 after 3 years at 10 °C.' });
    expect(hint).toBe('100\u202f% when new, often 85\u202f% after 3 years at 10 °C.');
  });
});
