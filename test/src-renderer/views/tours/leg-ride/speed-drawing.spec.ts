import { describe, expect, it } from 'vitest';
import { drawSpeeds } from '../../../../../src-renderer/views/tours/leg-ride/speed-drawing.ts';
import { legHub } from '../../../support/fake-leg-ride.ts';

const palette = (property: string): string => property;
const speeds = [
  { fromKmh: 5, toKmh: 10, share: 0.3 },
  { fromKmh: 10, toKmh: 15, share: 0.6 },
  { fromKmh: 15, toKmh: 20, share: 0.1 },
];
const drawing = (hub = legHub() as ReturnType<typeof legHub> | null) =>
  drawSpeeds({ speeds, hub }, palette, 'en-GB');

/** What stands in the tooltip beside this place of this series. */
function tooltip(datasetIndex: number, dataIndex: number, y = 0): string {
  const label = drawing().options?.plugins?.tooltip?.callbacks?.label as (item: object) => string;
  const { label: name } = drawing().data.datasets[datasetIndex]!;
  const item = { datasetIndex, dataIndex, dataset: { label: name }, parsed: { x: 0, y } };
  return label(item).replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
}

describe('drawSpeeds()', () => {
  it('draws bars alone, and no second axis, without a hub', () => {
    const { data, options } = drawing(null);
    expect(data.datasets.map(({ label }) => label)).toEqual(['Riding time']);
    expect(Object.keys(options?.scales ?? {})).toEqual(['x', 'y']);
  });

  it('says nothing of a band that is not there', () => {
    expect(tooltip(0, 9)).toBe('');
  });

  it('puts each bar over the middle of its band, all of one width', () => {
    const [bars] = drawing().data.datasets;
    expect(bars?.data).toEqual([
      { x: 7.5, y: 30 },
      { x: 12.5, y: 60 },
      { x: 17.5, y: 10 },
    ]);
    expect(drawing().options?.scales?.['x']).toMatchObject({ min: 5, max: 20, ticks: { stepSize: 5 } });
  });

  it('draws power and both drags on the axis of watts', () => {
    const lines = drawing().data.datasets.slice(1);
    expect(lines.map(({ label }) => label)).toEqual([
      'Power at the plug',
      'Hub’s drag, charging',
      'Hub’s drag, switched off',
    ]);
    expect(lines.map((line) => 'yAxisID' in line && line.yAxisID)).toEqual(['watts', 'watts', 'watts']);
    const { speedKmh, onW } = legHub().curve[1]!;
    expect(lines[1]?.data[1]).toEqual({ x: speedKmh, y: onW });
  });

  it('draws one line of drag for a hub that only turns', () => {
    const [line, ...more] = drawing(legHub({ converter: null })).data.datasets.slice(1);
    const { speedKmh, offW } = legHub().curve[1]!;
    expect([line?.label, line?.data[1], more]).toEqual(['Hub’s drag', { x: speedKmh, y: offW }, []]);
  });

  it('tells lines of one colour apart by their dashes', () => {
    const dashes = drawing()
      .data.datasets.slice(1)
      .map((line) => ('borderDash' in line ? JSON.stringify(line.borderDash) : ''));
    expect(new Set(dashes).size).toBe(3);
  });

  it('names what is under the pointer, with its unit', () => {
    expect(tooltip(0, 1)).toBe('60 % of the riding time at 10 to 15 km/h');
    expect(tooltip(0, 2)).toBe('10 % of the riding time at 15 to 20 km/h');
    expect(tooltip(1, 0, 2.53)).toBe('Power at the plug: 2.5 W');
  });
});
