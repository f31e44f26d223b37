import type { Expected, LegSun, PanelSun, SunBy } from '../../../../shared-types/leg-sun.ts';
import { formatNumber, wattHours } from '../../../../shared-types/figures.ts';
import { axisLooks } from '../../../parts/charts/axis-looks.ts';
import { barLooks, barStyle, solidBar, type BarLook } from '../../../parts/charts/bar-looks.ts';
import type { Drawing } from '../../../parts/charts/drawing.ts';
import type { LegendEntry } from '../../../parts/charts/legend.ts';
import type { Palette } from '../../../parts/charts/palette.ts';
import { whiskers } from '../../../parts/charts/whiskers.ts';
import { radiationText } from './finding.ts';
import { periodName } from './periods.ts';

/** One row of bars, a bar a period. */
export interface SunBars {
  readonly label: string;
  readonly look: BarLook;
  readonly expected: readonly Expected[];
  readonly text: (value: number, locale?: string) => string;
}

const colour = '--panel';

/** What each panel gives; without a panel, the light itself. */
export function barsOf({ periods }: LegSun, panels: readonly PanelSun[]): readonly SunBars[] {
  if (panels.length > 0) {
    return panels.map(({ label, periods: expected }, place) => ({
      label,
      look: barLooks[place % barLooks.length]!,
      expected,
      text: wattHours,
    }));
  }
  const expected = periods.map(({ radiationKWhM2 }) => radiationKWhM2);
  return [{ label: 'Radiation on the flat', look: solidBar, expected, text: radiationText }];
}

export function sunLegend(bars: readonly SunBars[]): readonly LegendEntry[] {
  return bars.map(({ label, look }) => ({ label, colour, mark: 'bar', dash: [], bar: look }));
}

export function drawSun(
  { periods }: LegSun,
  by: SunBy,
  bars: readonly SunBars[],
  palette: Palette,
  locale?: string,
): Drawing {
  const axes = axisLooks(palette);
  const bands = bars.map(({ expected }) => expected.map(({ band }) => band));
  return {
    type: 'bar',
    data: {
      labels: periods.map(({ date }) => periodName(date, by, locale)),
      datasets: bars.map(({ label, look, expected }) => ({
        type: 'bar',
        label,
        data: expected.map(({ mean }) => mean),
        ...barStyle(look, palette(colour)),
        categoryPercentage: 0.9,
        barPercentage: 0.85,
      })),
    },
    plugins: [whiskers(bands, palette('--ink'))],
    options: {
      ...axes.options,
      scales: { x: axes.x, y: { ...axes.y, min: 0, suggestedMax: highest(bars) } },
      plugins: {
        tooltip: {
          callbacks: {
            label: ({ datasetIndex, dataIndex }) => tooltipText(bars[datasetIndex], dataIndex, locale),
          },
        },
      },
    },
  };
}

/** The axis holds the whiskers too, which no dataset knows of. */
function highest(bars: readonly SunBars[]): number {
  return Math.max(
    0,
    ...bars.flatMap(({ expected }) => expected.map(({ mean, band }) => Math.max(mean, band.p90))),
  );
}

function tooltipText(bars: SunBars | undefined, place: number, locale?: string): string {
  const expected = bars?.expected[place];
  if (bars === undefined || expected === undefined) return '';
  const { mean, band } = expected;
  const low = formatNumber(band.p10, { digits: 1, locale });
  return `${bars.label}: ${bars.text(mean, locale)}, ${low} to ${bars.text(band.p90, locale)}`;
}
