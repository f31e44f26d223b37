import { display } from '../../state/display.svelte.ts';
import type { Palette } from './palette.ts';

/** What all charts share: quiet axes in the rider's number format, no movement, figures of the point under the pointer. */
export function axisLooks(palette: Palette) {
  const ticks = { color: palette('--soft'), maxRotation: 0, autoSkipPadding: 16 };
  const border = { color: palette('--line') };
  return {
    x: { ticks, border, grid: { display: false } },
    y: {
      ticks: { ...ticks, maxTicksLimit: 6 },
      border: { display: false },
      grid: { color: palette('--grid') },
    },
    options: {
      ...(display.locale !== undefined && { locale: display.locale }),
      responsive: true,
      maintainAspectRatio: false,
      interaction: { mode: 'index', intersect: false },
    },
  } as const;
}
