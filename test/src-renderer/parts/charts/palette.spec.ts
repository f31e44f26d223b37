import { describe, expect, it } from 'vitest';
import { faded } from '../../../../src-renderer/parts/charts/palette.ts';

describe('faded()', () => {
  it('keeps the colour and sets what is let through', () => {
    expect(faded('rgb(192, 127, 0)', 0.25)).toBe('rgba(192, 127, 0, 0.25)');
  });

  it('drops an opacity the colour had before', () => {
    expect(faded('rgba(192, 127, 0, 0.9)', 0.25)).toBe('rgba(192, 127, 0, 0.25)');
  });
});
