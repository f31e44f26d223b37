import { percent, withUnit } from '../../../../shared-types/figures.ts';
import type { LegHub, LegRide, SpeedShare } from '../../../../shared-types/leg-ride.ts';
import { axisLooks } from '../../../parts/charts/axis-looks.ts';
import type { Drawing, Point, Series } from '../../../parts/charts/drawing.ts';
import type { Palette } from '../../../parts/charts/palette.ts';
import { display } from '../../../state/display.svelte.ts';
import { hubFigures } from './hub-curve.ts';
import { bandMiddlesKmh, bandWidthKmh, speedPhrase } from './speed-bands.ts';

export const ridingLabel = 'Riding time';
/** How much of its band a bar covers: bands touch, bars just do not. */
const barShare = 0.94;

/** Speeds stand on the axis in the rider's unit. */
const shown = (kmh: number): number => display.value(kmh, 'km/h');

type Axes = ReturnType<typeof axisLooks>;

/** Bars of riding time by speed, and over them the lines of the hub on an axis of their own. */
export function drawSpeeds(
  { speeds, hub }: Pick<LegRide, 'speeds' | 'hub'>,
  palette: Palette,
  locale?: string,
): Drawing {
  const axes = axisLooks(palette);
  const title = (text: string) => ({ display: true, text, color: palette('--soft') });
  return {
    type: 'bar',
    data: {
      datasets: [ridingBars(speeds, palette('--wall')), ...(hub === null ? [] : hubLines(hub, palette))],
    },
    options: {
      ...axes.options,
      interaction: { mode: 'nearest', axis: 'x', intersect: false },
      scales: {
        x: { ...speedAxis(axes, speeds), title: title(`Speed, ${display.unit('km/h')}`) },
        y: { ...axes.y, min: 0, title: title(`${ridingLabel}, %`) },
        ...(hub === null ? {} : { watts: { ...wattAxis(axes), title: title('Hub, W') } }),
      },
      plugins: {
        tooltip: {
          callbacks: {
            title: ([item]) =>
              withUnit(item?.parsed.x ?? Number.NaN, display.unit('km/h'), { digits: 1, locale }),
            label: ({ datasetIndex, dataIndex, dataset, parsed }) =>
              datasetIndex === 0
                ? bandText(speeds, dataIndex, locale)
                : `${dataset.label ?? ''}: ${withUnit(parsed.y ?? Number.NaN, 'W', { digits: 1, locale })}`,
          },
        },
      },
    },
  };
}

/** A tick at each edge of a band: ticks closer than the bars would make the bars as narrow. */
function speedAxis({ x }: Axes, speeds: readonly SpeedShare[]) {
  const stepSize = shown(bandWidthKmh(speeds));
  const min = shown(speeds[0]?.fromKmh ?? 0);
  const last = speeds.at(-1);
  const max = last === undefined ? min + stepSize : shown(last.toKmh);
  const ticks = { ...x.ticks, stepSize, format: { minimumFractionDigits: 0, maximumFractionDigits: 1 } };
  return { ...x, type: 'linear', offset: false, min, max, ticks } as const;
}

function wattAxis({ y }: Axes) {
  return { ...y, type: 'linear', position: 'right', min: 0, grid: { display: false } } as const;
}

function bandText(speeds: readonly SpeedShare[], place: number, locale?: string): string {
  const band = speeds[place];
  if (band === undefined) return '';
  const phrase = speedPhrase(band.fromKmh, band.toKmh, locale);
  return `${percent(band.share, { digits: 1, locale })} of the riding time ${phrase}`;
}

function ridingBars(speeds: readonly SpeedShare[], colour: string): Series {
  const middles = bandMiddlesKmh(speeds);
  return {
    type: 'bar',
    label: ridingLabel,
    data: speeds.map(({ share }, place): Point => ({ x: shown(middles[place]!), y: share * 100 })),
    backgroundColor: colour,
    grouped: false,
    categoryPercentage: 1,
    barPercentage: barShare,
    // Further back than the lines.
    order: 1,
  };
}

function hubLines(hub: LegHub, palette: Palette): readonly Series[] {
  return hubFigures(hub).map(({ key, label, colour, dash, widthPx }) => ({
    type: 'line',
    label,
    data: hub.curve.map((point): Point => ({ x: shown(point.speedKmh), y: point[key] })),
    yAxisID: 'watts',
    borderColor: palette(colour),
    backgroundColor: palette(colour),
    borderWidth: widthPx,
    borderDash: [...dash],
    pointRadius: 0,
    order: 0,
  }));
}
