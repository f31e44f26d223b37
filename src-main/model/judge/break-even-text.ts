import type { MapCell, MapScenario } from '../../../shared-types/break-even.ts';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import type { MapGrid } from './break-even-map.ts';

/** Wide enough for a letter, its mark and a lead of three figures. */
const cellWidth = 8;
const corner = 'days';

/** A map in lines of equal width: a letter for the leader and its lead in points, under a line of days between walls. */
export function mapText(
  { days, gapsDays }: MapGrid,
  cells: readonly MapCell[],
  scenarios: readonly Pick<MapScenario, 'id' | 'letter' | 'label'>[],
): string {
  const letterOf = new Map(scenarios.map(({ id, letter }) => [id, letter]));
  const line = (head: string, texts: readonly string[]): string =>
    [head.padStart(corner.length), ...texts.map((text) => text.padStart(cellWidth))].join('');
  const rows = days.map((length, row) => {
    const from = row * gapsDays.length;
    const texts = cells.slice(from, from + gapsDays.length).map((cell) => cellText(cell, letterOf));
    return line(String(length), texts);
  });
  return [
    'Across: days between nights with a wall. Down: days of the tour.',
    line(corner, gapsDays.map(String)),
    ...rows,
    ...scenarios.map(({ letter, label }) => `${letter}  ${label}`),
    'Figures: lead in points of 100; none where no score parts the first two.',
    'In brackets: none carries the plan, this is the nearest. *: leads, though only another carries the plan. -: none within the limits.',
  ].join('\n');
}

function cellText(
  { leaderId, leadPoints, carrying }: MapCell,
  letterOf: ReadonlyMap<string, string>,
): string {
  if (leaderId === null) return '-';
  const letter = letterOf.get(leaderId)!;
  if (carrying === 'none') return `(${letter})`;
  const mark = carrying === 'another' ? '*' : '';
  const lead = leadPoints === null ? '' : ` ${formatNumber(leadPoints, { locale: wordsLocale })}`;
  return `${letter}${mark}${lead}`;
}
