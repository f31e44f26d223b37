import { describe, expect, it } from 'vitest';
import { supplyDrawing, supplyTop } from '../../../../src-main/sheet/figures/supply.ts';
import { attributesOf, numbersOf } from './read-svg.ts';

const widthPt = 101;

describe('supplyDrawing', () => {
  it('draws nothing wide where nothing comes in and nothing is used', () => {
    const drawing = supplyDrawing({ wall: 0, panel: 0, hub: 0, demand: 0 }, 0).svg(widthPt);
    for (const value of numbersOf(drawing)) expect(value).not.toBeNaN();
    expect(attributesOf(drawing, 'rect').map(({ width }) => width)).toEqual(['0', '0', '0']);
  });

  it('puts wall, panel and hub end to end, and a tick at the use', () => {
    const drawing = supplyDrawing({ wall: 20, panel: 10, hub: 30, demand: 45 }, 100).svg(widthPt);
    // A point of the width is left for the tick: 100 pt for 100 Wh.
    expect(attributesOf(drawing, 'rect').map(({ x, width }) => [x, width])).toEqual([
      ['0', '20'],
      ['20', '10'],
      ['30', '30'],
    ]);
    expect(attributesOf(drawing, 'line')[0]).toMatchObject({ x1: '45', x2: '45' });
  });
});

describe('supplyTop', () => {
  it('is the larger of what comes in and what is used', () => {
    expect(supplyTop({ wall: 20, panel: 10, hub: 30, demand: 45 })).toBe(60);
    expect(supplyTop({ wall: 2, panel: 0, hub: 0, demand: 45 })).toBe(45);
  });
});
