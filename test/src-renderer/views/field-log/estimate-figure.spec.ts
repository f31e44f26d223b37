import { describe, expect, it } from 'vitest';
import { estimateFigure } from '../../../../src-renderer/views/field-log/estimate-figure.ts';
import { fakeEstimate } from '../../support/fake-readings.ts';

const en = 'en-GB';
const palette = (): string => 'rgb(10, 20, 30)';

describe('estimateFigure()', () => {
  it('is none without a reading that bounds it by itself', () => {
    expect(estimateFigure(fakeEstimate('b', { cells: [] }), 'Bank', en)).toBeNull();
  });

  it('has a row for each reading, and the interval and the estimate below', () => {
    const { rows, columns } = estimateFigure(fakeEstimate('b'), 'Bank', en)!.table();
    expect(columns).toEqual(['Date', 'Lower bound, Wh', 'Upper bound, Wh']);
    expect(rows).toEqual([
      ['2027-05-01', 52, 56],
      ['2027-05-03', 50, 'none'],
      ['2027-05-05', 54, 54.5],
      ['Interval of the estimate', 51, 59],
      ['Estimate', 55, 55],
    ]);
  });

  it('draws a missing bound to the edge, and a meter’s sliver thick enough to see', () => {
    const { data, options } = estimateFigure(fakeEstimate('b'), 'Bank', en)!.draw(palette);
    const top = Number(options?.scales?.['y']?.max);
    const bars = data.datasets.at(-1)!.data as unknown as [number, number][];
    expect(bars[1]).toEqual([50, top]);
    expect(bars[2]![1] - bars[2]![0]).toBeGreaterThan(0.5);
    expect(top).toBeGreaterThan(63);
  });

  it('draws no estimate where there is none', () => {
    const { draw, legend } = estimateFigure(fakeEstimate('b', { estimate: null }), 'Bank', en)!;
    expect(draw(palette).data.datasets.map(({ label }) => label)).not.toContain('Estimate');
    expect(legend.map(({ label }) => label)).not.toContain('Estimate');
  });
});
