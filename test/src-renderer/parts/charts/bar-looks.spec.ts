import { describe, expect, it } from 'vitest';
import { barLooks, barStyle, solidBar } from '../../../../src-renderer/parts/charts/bar-looks.ts';

const amber = 'rgb(192, 127, 0)';

describe('barLooks', () => {
  it('has no two looks that are the same', () => {
    expect(new Set(barLooks.map((look) => JSON.stringify(look))).size).toBe(barLooks.length);
  });

  it('shows the full colour somewhere in every look', () => {
    for (const { fill, topPx, sidePx } of barLooks) {
      expect(fill === 1 || topPx > 0 || sidePx > 0).toBe(true);
    }
  });
});

describe('barStyle()', () => {
  it('fills a solid bar and draws no edge', () => {
    expect(barStyle(solidBar, amber)).toEqual({
      backgroundColor: amber,
      borderColor: amber,
      borderWidth: { top: 0, left: 0, right: 0, bottom: 0 },
    });
  });

  it('never edges the foot of a bar', () => {
    for (const look of barLooks) expect(barStyle(look, amber).borderWidth.bottom).toBe(0);
  });

  it('pales the inside and keeps the edge in full colour', () => {
    const style = barStyle({ fill: 0.3, topPx: 2, sidePx: 1 }, amber);
    expect(style).toMatchObject({ backgroundColor: 'rgba(192, 127, 0, 0.3)', borderColor: amber });
    expect(style.borderWidth).toMatchObject({ top: 2, left: 1, right: 1 });
  });
});
