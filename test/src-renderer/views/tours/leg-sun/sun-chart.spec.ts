import { describe, expect, it } from 'vitest';
import type { PanelSun } from '../../../../../shared-types/leg-sun.ts';
import { barsOf, drawSun, sunLegend } from '../../../../../src-renderer/views/tours/leg-sun/sun-chart.ts';
import { legSun, panelSun } from '../../../support/fake-leg-sun.ts';

const palette = (property: string): string => property;
const four = [28, 12, 40, 7].map((wh, i) => panelSun(`p${i}`, `Panel ${i}`, [wh, wh + 1, wh + 2]));
const drawing = (panels: readonly PanelSun[]) => {
  const sun = legSun({ panels });
  return drawSun(sun, 'day', barsOf(sun, panels), palette, 'en-GB');
};
const setsOf = (panels: readonly PanelSun[]) => drawing(panels).data.datasets;

/** What stands in the tooltip of the bar at this place of the first series. */
function tooltip(panels: readonly PanelSun[], place: number): string {
  const label = drawing(panels).options?.plugins?.tooltip?.callbacks?.label as (item: object) => string;
  return label({ datasetIndex: 0, dataIndex: place }).replaceAll('\u00a0', ' ');
}

describe('barsOf()', () => {
  it('shows the light itself where there is no panel', () => {
    const [bars, ...more] = barsOf(legSun(), []);
    expect(more).toEqual([]);
    expect(bars).toMatchObject({
      label: 'Radiation on the flat',
      expected: [{ mean: 5 }, { mean: 5 }, { mean: 5 }],
    });
  });

  it('gives four panels four looks', () => {
    const looks = barsOf(legSun(), four).map(({ look }) => JSON.stringify(look));
    expect(new Set(looks).size).toBe(4);
  });
});

describe('sunLegend()', () => {
  it('shows each panel as its bars are drawn', () => {
    const bars = barsOf(legSun(), four);
    const legend = sunLegend(bars);
    expect(legend.map(({ label }) => label)).toEqual(['Panel 0', 'Panel 1', 'Panel 2', 'Panel 3']);
    expect(legend.map(({ bar }) => bar)).toEqual(bars.map(({ look }) => look));
  });
});

describe('drawSun()', () => {
  it('draws nothing but the light without a panel', () => {
    expect(setsOf([]).map(({ label }) => label)).toEqual(['Radiation on the flat']);
  });

  it('draws a bar for each panel and day', () => {
    const sets = setsOf(four);
    expect(drawing(four).data.labels).toEqual(['3 May', '4 May', '5 May']);
    expect(sets.map(({ data }) => data.length)).toEqual([3, 3, 3, 3]);
    expect(sets[2]?.data).toEqual([40, 41, 42]);
  });

  it('leaves room above the bars for the whiskers', () => {
    const { p90 } = four[2]!.periods[2]!.band;
    expect(drawing(four).options?.scales?.['y']?.suggestedMax).toBe(p90);
    expect(p90).toBeGreaterThan(42);
  });

  it('lays whiskers over the bars', () => {
    expect(drawing(four).plugins?.map(({ id }) => id)).toEqual(['whiskers']);
  });

  it('names the band beside the figure under the pointer', () => {
    expect(tooltip([panelSun('a', '20 W panel', [30, 45])], 1)).toBe('20 W panel: 45 Wh, 15 to 68 Wh');
  });

  it('says nothing of a bar that is not there', () => {
    expect(tooltip([panelSun('a', '20 W panel', [30])], 5)).toBe('');
  });
});
