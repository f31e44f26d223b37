import type { DayLedger } from '../../../shared-types/comparison.ts';
import { dayMonth } from '../../../shared-types/dates.ts';
import { wattHours } from '../../../shared-types/figures.ts';
import { axisLooks } from '../../parts/charts/axis-looks.ts';
import { barStyle } from '../../parts/charts/bar-looks.ts';
import type { Drawing, Series } from '../../parts/charts/drawing.ts';
import type { LegendEntry } from '../../parts/charts/legend.ts';
import type { Palette } from '../../parts/charts/palette.ts';
import { givingSources, type DailyEnergy, type EnergySource } from './daily-energy.ts';
import { worthSayingWh } from './ledger-finding.ts';

const noDash: readonly number[] = [];

function anyUnserved({ unservedWh }: DailyEnergy): boolean {
  return unservedWh.some((wh) => wh >= worthSayingWh);
}

export function ledgerLegend(energy: DailyEnergy): readonly LegendEntry[] {
  const bars = givingSources(energy).map(({ words, colour, look }): LegendEntry => ({
    label: words,
    colour,
    mark: 'bar',
    dash: noDash,
    bar: look,
  }));
  const demand: LegendEntry = {
    label: energy.device === null ? 'What the devices ask for' : 'What it asks for',
    colour: '--ink',
    mark: 'line',
    dash: noDash,
  };
  const short: LegendEntry = { label: 'Part of it not served', colour: '--bad', mark: 'point', dash: noDash };
  return [...bars, demand, ...(anyUnserved(energy) ? [short] : [])];
}

export function drawLedger(energy: DailyEnergy, palette: Palette): Drawing {
  const { days } = energy;
  const axes = axisLooks(palette);
  return {
    type: 'bar',
    data: {
      labels: days.map(({ day }) => `${day}`),
      datasets: [
        demandLine(energy, palette),
        ...(anyUnserved(energy) ? [unservedMarks(energy, palette)] : []),
        ...givingSources(energy).map((source) => sourceBars(source, palette)),
      ],
    },
    options: {
      ...axes.options,
      scales: {
        x: { ...axes.x, stacked: true, title: { display: true, text: 'Day', color: palette('--soft') } },
        y: { ...axes.y, stacked: true, min: 0 },
      },
      plugins: {
        tooltip: {
          callbacks: {
            title: ([item]) => dayTitle(days[item?.dataIndex ?? 0]),
            label: ({ dataset, parsed }) => `${dataset.label ?? ''}: ${wattHours(parsed.y ?? Number.NaN)}`,
          },
        },
      },
    },
  };
}

function dayTitle(day: DayLedger | undefined): string {
  return day === undefined ? '' : `Day ${day.day}, ${dayMonth(day.date)}`;
}

function sourceBars({ words, colour, look, wh }: EnergySource, palette: Palette): Series {
  return {
    type: 'bar',
    label: words,
    data: [...wh],
    ...barStyle(look, palette(colour)),
    stack: 'sources',
    categoryPercentage: 0.9,
    barPercentage: 0.85,
  };
}

/** A stack of its own each: lines in the bars' stack would be piled on top of them. */
function demandLine({ demandWh }: DailyEnergy, palette: Palette): Series {
  return {
    type: 'line',
    label: 'Asked for',
    data: [...demandWh],
    borderColor: palette('--ink'),
    backgroundColor: palette('--ink'),
    borderWidth: 1.5,
    pointRadius: 0,
    stack: 'demand',
  };
}

function unservedMarks({ unservedWh }: DailyEnergy, palette: Palette): Series {
  const colour = palette('--bad');
  return {
    type: 'line',
    label: 'Not served',
    data: unservedWh.map((wh) => (wh >= worthSayingWh ? wh : null)),
    borderColor: colour,
    backgroundColor: colour,
    showLine: false,
    pointStyle: 'triangle',
    pointRadius: 5,
    stack: 'unserved',
  };
}
