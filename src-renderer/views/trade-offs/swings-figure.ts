import { formatNumber } from '../../../shared-types/figures.ts';
import type { Swings } from '../../../shared-types/swings.ts';
import type { Figure } from '../../parts/charts/figure.ts';
import { drawSwings, swingsLegend } from './swings-chart.ts';
import { swingsFinding } from '../../../shared-types/swings-finding.ts';
import { swingsTable } from './swings-table.ts';
import { labelOf } from '../../../shared-types/swing-words.ts';

/** What would change the answer, ready to be framed. */
export function swingsFigure(swings: Swings): Figure {
  return {
    title: swingsFinding(swings),
    subtitle: subtitleOf(swings),
    fileName: 'what-would-change-it',
    legend: swingsLegend,
    table: () => swingsTable(swings),
    draw: (palette) => drawSwings(swings, palette),
  };
}

function subtitleOf(swings: Swings): string {
  const lead = formatNumber(swings.leadPoints, { digits: 1, fixed: true });
  const first = labelOf(swings, swings.firstId);
  return `Lead of ${first} over ${labelOf(swings, swings.secondId)} by score, points of 100: ${lead} as planned, and with one assumption at its low or high. After the name: where ${first} gives up the first place.`;
}

/** Which assumptions nothing here rests on; null when all were tried. */
export function leftOutText({ leftOut }: Swings): string | null {
  if (leftOut.length === 0) return null;
  return `Left out: ${leftOut.map(({ name, why }) => `${name} (${why})`).join('; ')}.`;
}
