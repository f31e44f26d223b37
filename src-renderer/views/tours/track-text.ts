import { formatNumber, percent } from '../../../shared-types/figures.ts';
import type { Reading } from '../../state/track-import.svelte.ts';

/** How far a track has been taken in: `Reading ridge.gpx, 43 %, 81,000 points`. */
export function readingText({ name, share, points }: Reading, locale?: string): string {
  return `Reading ${name}, ${percent(share, { locale })}, ${formatNumber(points, { locale })} points`;
}

const unit = 100;

/** The heights of a track as the points of a line in a box of this size, `x,y x,y`; the highest at its top. */
export function heightLine(heightsM: readonly number[], widthPx: number, heightPx: number): string {
  const least = Math.min(...heightsM);
  const span = Math.max(...heightsM) - least;
  const steps = Math.max(1, heightsM.length - 1);
  return heightsM
    .map((heightM, place) => {
      const up = span === 0 ? 0 : (heightM - least) / span;
      return `${rounded((place / steps) * widthPx)},${rounded((1 - up) * heightPx)}`;
    })
    .join(' ');
}

function rounded(px: number): number {
  return Math.round(px * unit) / unit;
}
