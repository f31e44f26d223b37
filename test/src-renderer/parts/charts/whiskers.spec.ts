import type { Chart } from 'chart.js';
import { describe, expect, it } from 'vitest';
import type { Band } from '../../../../shared-types/comparison.ts';
import { whiskers, whiskerStroke } from '../../../../src-renderer/parts/charts/whiskers.ts';

describe('whiskerStroke()', () => {
  it('draws no caps where they would be blots', () => {
    expect(whiskerStroke(0).capPx).toBe(0);
    expect(whiskerStroke(2).capPx).toBe(0);
  });

  it('leaves most of a narrow bar to be seen', () => {
    expect(whiskerStroke(2).linePx).toBeLessThan(1);
  });

  it('never fades to nothing', () => {
    expect(whiskerStroke(0).linePx).toBeGreaterThan(0.5);
  });

  // Line and caps of the size the style guide of this project asks for.
  it('is 1.5 px with short caps on a broad bar', () => {
    expect(whiskerStroke(60)).toEqual({ linePx: 1.5, capPx: 8 });
  });
});

/** A chart whose axis is 100 px high for 0 to 100, and a pen that notes each move. */
function chartOf(bars: readonly { x: number; width: number }[]) {
  const moves: string[] = [];
  const pen = {
    moveTo: (x: number, y: number) => moves.push(`from ${x} ${y}`),
    lineTo: (x: number, y: number) => moves.push(`to ${x} ${y}`),
    ...{
      save: () => undefined,
      restore: () => undefined,
      beginPath: () => undefined,
      stroke: () => undefined,
    },
  };
  const chart = {
    ctx: pen,
    scales: { y: { getPixelForValue: (value: number) => 100 - value } },
    getDatasetMeta: () => ({ data: bars, yAxisID: 'y' }),
  };
  return { chart: chart as unknown as Chart<'bar'>, moves, pen: pen as { strokeStyle?: string } };
}

function drawnOn(bars: readonly { x: number; width: number }[], bands: readonly (readonly Band[])[]) {
  const { chart, moves, pen } = chartOf(bars);
  whiskers<'bar'>(bands, 'ink').afterDatasetsDraw?.(chart, {}, {}, false);
  return { moves, pen };
}

describe('whiskers()', () => {
  it('draws nothing over a chart without bars', () => {
    expect(drawnOn([], [[{ p10: 1, p90: 2 }]]).moves).toEqual([]);
  });

  it('leaves a bar bare that has no band', () => {
    const bars = [
      { x: 10, width: 3 },
      { x: 20, width: 3 },
    ];
    expect(drawnOn(bars, [[{ p10: 30, p90: 80 }]]).moves).toEqual(['from 10 70', 'to 10 20']);
  });

  it('reaches from the low to the high end', () => {
    const { moves, pen } = drawnOn([{ x: 50, width: 60 }], [[{ p10: 30, p90: 80 }]]);
    expect(moves).toEqual([
      ...['from 50 70', 'to 50 20'],
      ...['from 46 70', 'to 54 70'],
      ...['from 46 20', 'to 54 20'],
    ]);
    expect(pen.strokeStyle).toBe('ink');
  });
});
