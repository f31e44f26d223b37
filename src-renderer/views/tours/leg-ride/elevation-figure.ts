import { withUnit } from '../../../../shared-types/figures.ts';
import type { TrackProfile } from '../../../../shared-types/track.ts';
import { axisLooks } from '../../../parts/charts/axis-looks.ts';
import type { Drawing, Point, Series } from '../../../parts/charts/drawing.ts';
import type { Figure } from '../../../parts/charts/figure.ts';
import type { LegendEntry } from '../../../parts/charts/legend.ts';
import { faded, type Palette } from '../../../parts/charts/palette.ts';
import { display } from '../../../state/display.svelte.ts';

const heightLabel = 'Height';
const legend: readonly LegendEntry[] = [{ label: heightLabel, colour: '--wall', mark: 'line', dash: [] }];
const areaShare = 0.22;

/** The heights of a track along its way; null where no point carries one. */
export function elevationFigure(track: TrackProfile, locale?: string): Figure | null {
  if (track.heightsM.length === 0) return null;
  return {
    title: elevationFinding(track, locale),
    subtitle: `${track.name}: height along the way, ${display.unit('m')} by ${display.unit('km')}, smoothed.`,
    fileName: 'elevation-profile',
    legend,
    table: () => ({
      columns: [`Distance, ${display.unit('km')}`, `${heightLabel}, ${display.unit('m')}`],
      rows: shownProfile(track).map(({ x, y }) => [x, Math.round(y)]),
    }),
    draw: (palette) => drawElevation(track, palette, locale),
  };
}

export function elevationFinding({ heightsM, ascentM, descentM }: TrackProfile, locale?: string): string {
  const highest = display.height(Math.max(...heightsM), { locale });
  if (display.height(Math.min(...heightsM), { locale }) === highest) return `Level at ${highest}`;
  const lowest = display.figure(Math.min(...heightsM), 'm', { locale });
  const up = display.height(ascentM, { locale });
  return `Between ${lowest} and ${highest}, ${up} up and ${display.height(descentM, { locale })} down`;
}

/** The heights over their distance, km: they stand at equal distances from start to end. */
export function profileOf({ heightsM, distanceKm }: TrackProfile): readonly Point[] {
  const steps = Math.max(1, heightsM.length - 1);
  return heightsM.map((y, place) => ({ x: (place / steps) * distanceKm, y }));
}

function shownProfile(track: TrackProfile): readonly Point[] {
  return profileOf(track).map(({ x, y }) => ({ x: display.value(x, 'km'), y: display.value(y, 'm') }));
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
          max: display.value(track.distanceKm, 'km'),
          title: { display: true, text: display.unit('km'), color: palette('--soft') },
          ticks: { ...axes.x.ticks, includeBounds: false },
        },
        y: { ...axes.y, grace: '10%' },
      },
      plugins: {
        tooltip: {
          callbacks: {
            title: ([item]) =>
              withUnit(item?.parsed.x ?? Number.NaN, display.unit('km'), { digits: 1, locale }),
            label: ({ parsed }) => withUnit(parsed.y ?? Number.NaN, display.unit('m'), { locale }),
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
    data: [...shownProfile(track)],
    parsing: false,
    normalized: true,
    pointRadius: 0,
    borderWidth: 2,
    borderColor: colour,
    backgroundColor: faded(colour, areaShare),
    fill: 'start',
  };
}
