import type { LegRide } from '../../../../shared-types/leg-ride.ts';
import type { ChartTable } from '../../../parts/charts/chart-table.ts';
import type { Figure } from '../../../parts/charts/figure.ts';
import type { LegendEntry } from '../../../parts/charts/legend.ts';
import { display } from '../../../state/display.svelte.ts';
import { hubAt, hubFigures } from './hub-curve.ts';
import { bandMiddlesKmh } from './speed-bands.ts';
import { drawSpeeds, ridingLabel } from './speed-drawing.ts';
import { speedFinding } from './speed-finding.ts';

type Ridden = Pick<LegRide, 'speeds' | 'hub'>;

/** How fast the leg is ridden, and what a hub gives and takes at each speed. */
export function speedFigure(ride: Ridden, locale?: string): Figure {
  return {
    title: speedFinding(ride, locale),
    subtitle: subtitleOf(ride),
    fileName: 'speed-and-hub-power',
    legend: speedLegend(ride),
    table: () => speedTable(ride),
    draw: (palette) => drawSpeeds(ride, palette, locale),
  };
}

function subtitleOf({ hub }: Ridden): string {
  if (hub === null) return `${ridingLabel} by speed, %.`;
  const line = hub.converter === null ? 'Line: drag of the hub' : 'Lines: power of the hub';
  return `Bars: riding time by speed, % (left). ${line} by speed, W (right).`;
}

function speedLegend({ hub }: Ridden): readonly LegendEntry[] {
  const bars: LegendEntry = { label: ridingLabel, colour: '--wall', mark: 'bar', dash: [] };
  const lines = hubFigures(hub).map(({ label, colour, dash }): LegendEntry => ({
    label,
    colour,
    mark: 'line',
    dash,
  }));
  return [bars, ...lines];
}

/** A row for each band, with what the hub does at its middle. */
function speedTable({ speeds, hub }: Ridden): ChartTable {
  const curve = hub?.curve ?? [];
  const shown = hubFigures(hub);
  const middles = bandMiddlesKmh(speeds);
  return {
    columns: [
      `Speed, ${display.unit('km/h')}`,
      `${ridingLabel}, %`,
      ...shown.map(({ label }) => `${label}, at the middle of the band, W`),
    ],
    rows: speeds.map(({ fromKmh, toKmh, share }, place) => [
      `${display.figure(fromKmh, 'km/h')} to ${display.figure(toKmh, 'km/h')}`,
      share * 100,
      ...shown.map(({ key }) => hubAt(curve, key, middles[place]!)),
    ]),
  };
}
