import { formatNumber, withUnit } from '../../../../shared-types/figures.ts';
import type { TrackProfile } from '../../../../shared-types/track.ts';
import { axisLooks } from '../../../parts/charts/axis-looks.ts';
import type { Drawing, Point, Series } from '../../../parts/charts/drawing.ts';
import type { Figure } from '../../../parts/charts/figure.ts';
import type { LegendEntry } from '../../../parts/charts/legend.ts';
import { faded, type Palette } from '../../../parts/charts/palette.ts';

const heightLabel = 'Height';
const legend: readonly LegendEntry[] = [{ label: heightLabel, colour: '--wall', mark: 'line', dash: [] }];
const areaShare = 0.22;

/** The heights of a track along its way; null where no point carries one. */
export function elevationFigure(track: TrackProfile, locale?: string): Figure | null {
  if (track.heightsM.length === 0) return null;
  return {
    title: elevationFinding(track, locale),
    subtitle: `${track.name}: height along the way, m by km, smoothed.`,
    fileName: 'elevation-profile',
    legend,
    table: () => ({
      columns: ['Distance, km', `${heightLabel}, m`],
      rows: profileOf(track).map(({ x, y }) => [x, Math.round(y)]),
    }),
    draw: (palette) => drawElevation(track, palette, locale),
  };
}

export function elevationFinding({ heightsM, ascentM, descentM }: TrackProfile, locale?: string): string {
  const highest = withUnit(Math.max(...heightsM), 'm', { locale });
  if (withUnit(Math.min(...heightsM), 'm', { locale }) === highest) return `Level at ${highest}`;
  const lowest = formatNumber(Math.min(...heightsM), { locale });
  const up = withUnit(ascentM, 'm', { locale });
  return `Between ${lowest} and ${highest}, ${up} up and ${withUnit(descentM, 'm', { locale })} down`;
}

/** The heights over their distance, km: they stand at equal distances from start to end. */
export function profileOf({ heightsM, distanceKm }: TrackProfile): readonly Point[] {
  const steps = Math.max(1, heightsM.length - 1);
  return heightsM.map((y, place) => ({ x: (place / steps) * distanceKm, y }));
}

function drawElevation(track: TrackProfile, palette: Palette, locale?: string): Drawing {
  const axes = axisLooks(palette);
  return {
    type: 'line',
    data: { datasets: [heightArea(track, palette('--wall'))] },
    options: {
      ...axes.options,
      scales: {
        x: {
          ...axes.x,
          type: 'linear',
          min: 0,
          max: track.distanceKm,
          title: { display: true, text: 'km', color: palette('--soft') },
          ticks: { ...axes.x.ticks, includeBounds: false },
        },
        y: { ...axes.y, grace: '10%' },
      },
      plugins: {
        tooltip: {
          callbacks: {
            title: ([item]) => withUnit(item?.parsed.x ?? Number.NaN, 'km', { digits: 1, locale }),
            label: ({ parsed }) => withUnit(parsed.y ?? Number.NaN, 'm', { locale }),
          },
        },
      },
    },
  };
}

function heightArea(track: TrackProfile, colour: string): Series {
  return {
    type: 'line',
    label: heightLabel,
    data: [...profileOf(track)],
    parsing: false,
    normalized: true,
    pointRadius: 0,
    borderWidth: 2,
    borderColor: colour,
    backgroundColor: faded(colour, areaShare),
    fill: 'start',
  };
}
