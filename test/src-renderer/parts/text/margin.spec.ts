import { describe, expect, it } from 'vitest';
import { marginFigure } from '../../../../src-renderer/parts/text/margin.ts';

describe('marginFigure()', () => {
  it('does not pretend to know a margin beyond what was tried', () => {
    const margin = { value: 3, band: null, capped: true, limitedBy: null };
    expect(marginFigure(margin, 'en-GB')).toBe('over +300\u202f%');
  });

  it('writes a shortfall with a true minus', () => {
    const margin = { value: -0.18, band: null, capped: false, limitedBy: { device: 'Phone', day: 3 } };
    expect(marginFigure(margin, 'en-GB')).toBe('\u221218\u202f%');
  });
});
