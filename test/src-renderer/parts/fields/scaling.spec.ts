import { describe, expect, it } from 'vitest';
import { asShown, asStored } from '../../../../src-renderer/parts/fields/scaling.ts';

describe('asShown()', () => {
  it.each([Number.NaN, Infinity, null, undefined, '5'])('shows nothing for %j', (value) => {
    expect(asShown(value, 1)).toBe('');
  });

  it('hides what binary fractions add in the last places', () => {
    expect(asShown(0.57, 100)).toBe(57);
    expect(asShown(0.07, 100)).toBe(7);
  });
});

describe('asStored()', () => {
  it('keeps an emptied field as no number', () => {
    expect(asStored(Number.NaN, 100)).toBeNaN();
  });

  it('brings every whole percentage back as it was', () => {
    for (let shown = 0; shown <= 100; shown += 1) expect(asShown(asStored(shown, 100), 100)).toBe(shown);
  });
});
