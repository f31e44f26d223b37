import type { Expected, LegSun, PanelSun, SunBy, SunUp } from '../../../../shared-types/leg-sun.ts';
import type { ChartTable } from '../../../parts/charts/chart-table.ts';
import { display } from '../../../state/display.svelte.ts';
import { clockTime, periodName } from './periods.ts';

/** Everything known of each period: the chart shows a part of it. */
export function sunTable(
  { periods }: Pick<LegSun, 'periods'>,
  by: SunBy,
  panels: readonly PanelSun[],
  locale?: string,
): ChartTable {
  return {
    columns: [
      ...(by === 'day' ? ['Date'] : ['Month']),
      ...['Sunrise', 'Sunset'],
      ...expectedColumns('Radiation', 'kWh/m²'),
      ...[`Air lowest, ${display.unit('°C')}`, `Air highest, ${display.unit('°C')}`],
      ...panels.flatMap(({ label }) => expectedColumns(label, 'Wh')),
    ],
    rows: periods.map((period, place) => [
      by === 'day' ? period.date : periodName(period.date, by, locale),
      ...riseAndSet(period.sun),
      ...figures(period.radiationKWhM2),
      ...[display.value(period.minDegC, '°C'), display.value(period.maxDegC, '°C')],
      ...panels.flatMap((panel) => figures(panel.periods[place])),
    ]),
  };
}

function expectedColumns(name: string, unit: string): readonly string[] {
  return [`${name}, ${unit}`, `${name}, 10 of 100 less, ${unit}`, `${name}, 90 of 100 less, ${unit}`];
}

function figures(expected: Expected | undefined): readonly number[] {
  if (expected === undefined) return [Number.NaN, Number.NaN, Number.NaN];
  return [expected.mean, expected.band.p10, expected.band.p90];
}

function riseAndSet(sun: SunUp): readonly string[] {
  if (sun.as === 'rises') return [clockTime(sun.riseH), clockTime(sun.setH)];
  const stays = sun.as === 'up' ? 'stays up' : 'stays down';
  return [stays, stays];
}
