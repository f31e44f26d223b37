import { dayMonth } from '../../../../shared-types/dates.ts';
import { wattHours } from '../../../../shared-types/figures.ts';
import type { LegHub, LegRide } from '../../../../shared-types/leg-ride.ts';
import { axisLooks } from '../../../parts/charts/axis-looks.ts';
import type { Drawing } from '../../../parts/charts/drawing.ts';
import type { Figure } from '../../../parts/charts/figure.ts';
import type { LegendEntry } from '../../../parts/charts/legend.ts';
import type { Palette } from '../../../parts/charts/palette.ts';
import { display } from '../../../state/display.svelte.ts';
import { needLabel, needText } from './need.ts';

const hubLabel = 'The hub';

type Ridden = Pick<LegRide, 'days' | 'needWhADay'>;

/** What the hub gives on each day, where the days differ. */
export function daysFigure(ride: Ridden, hub: LegHub, locale?: string): Figure {
  return {
    title: daysFinding(ride, hub, locale),
    subtitle:
      'Wh at the plug by day. Line: what the devices need on a mean day of the tour, at the hub’s plug.',
    fileName: 'hub-by-day',
    legend,
    table: () => ({
      columns: [
        ...['Date', 'Hub at the plug, Wh', `${needLabel}, Wh`],
        ...[`Distance, ${display.unit('km')}`, `Speed, ${display.unit('km/h')}`],
      ],
      rows: ride.days.map(({ date, hubWh, km, speedKmh }) => [
        ...[date, hubWh, ride.needWhADay],
        ...[display.value(km, 'km'), display.value(speedKmh, 'km/h')],
      ]),
    }),
    draw: (palette) => drawDays(ride, palette, locale),
  };
}

const legend: readonly LegendEntry[] = [
  { label: hubLabel, colour: '--hub', mark: 'bar', dash: [] },
  { label: needLabel, colour: '--ink', mark: 'line', dash: [] },
];

export function daysFinding({ days, needWhADay }: Ridden, { shortDays }: LegHub, locale?: string): string {
  const need = needText(needWhADay, locale);
  if (shortDays === 0) return `The hub alone gives ${need} or more on every day`;
  return shortDays === days.length
    ? `The hub alone falls short of ${need} on every day`
    : `The hub alone falls short of ${need} on ${shortDays} of ${days.length} days`;
}

function drawDays({ days, needWhADay }: Ridden, palette: Palette, locale?: string): Drawing {
  const axes = axisLooks(palette);
  return {
    type: 'bar',
    data: {
      labels: days.map(({ date }) => dayMonth(date, locale)),
      datasets: [
        {
          type: 'line',
          label: needLabel,
          data: days.map(() => needWhADay),
          borderColor: palette('--ink'),
          backgroundColor: palette('--ink'),
          borderWidth: 1.5,
          pointRadius: 0,
        },
        {
          type: 'bar',
          label: hubLabel,
          data: days.map(({ hubWh }) => hubWh),
          backgroundColor: palette('--hub'),
          categoryPercentage: 0.9,
          barPercentage: 0.85,
        },
      ],
    },
    options: {
      ...axes.options,
      scales: { x: axes.x, y: { ...axes.y, min: 0 } },
      plugins: {
        tooltip: {
          callbacks: {
            label: ({ dataset, parsed }) =>
              `${dataset.label ?? ''}: ${wattHours(parsed.y ?? Number.NaN, locale)}`,
          },
        },
      },
    },
  };
}
