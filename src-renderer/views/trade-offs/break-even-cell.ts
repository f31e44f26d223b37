import type { BreakEvenMap, MapCell } from '../../../shared-types/break-even.ts';
import { formatNumber, marginFigure, percent, withUnit } from '../../../shared-types/figures.ts';
import type { Method } from '../../../shared-types/scenario.ts';

type Named = Pick<BreakEvenMap, 'scenarios'>;

/** The scenario with this id; a map names all that lead on it. */
export function scenarioOf({ scenarios }: Named, id: string): BreakEvenMap['scenarios'][number] {
  return scenarios.find((each) => each.id === id)!;
}

export function methodOf(map: Named, { leaderId }: MapCell): Method | null {
  return leaderId === null ? null : scenarioOf(map, leaderId).method;
}

/** What stands in a cell: `B 36`; `(B)` the nearest where none carries the plan, `B*` a leader that does not. */
export function cellMark(map: Named, cell: MapCell, locale?: string): string {
  if (cell.leaderId === null) return '–';
  const { letter } = scenarioOf(map, cell.leaderId);
  if (cell.carrying === 'none') return `(${letter})`;
  const lead = cell.leadPoints === null ? '' : ` ${formatNumber(cell.leadPoints, { locale })}`;
  return `${letter}${cell.carrying === 'another' ? '*' : ''}${lead}`;
}

/** `14 days with a wall every 5 days`. */
export function cellTour({ days, gapDays }: Pick<MapCell, 'days' | 'gapDays'>, locale?: string): string {
  return `${daysText(days, locale)} ${wallsText(days, gapDays, locale)}`;
}

function wallsText(days: number, gapDays: number, locale?: string): string {
  if (gapDays >= days) return 'with no wall on the way';
  return gapDays === 1 ? 'with a wall every night' : `with a wall every ${daysText(gapDays, locale)}`;
}

function daysText(days: number, locale?: string): string {
  return withUnit(days, days === 1 ? 'day' : 'days', { locale });
}

/** What a cell comes to, in words: the tour, who leads and by how much, and whether that carries the plan. */
export function cellSentence(map: Named, cell: MapCell, locale?: string): string {
  return `${cellTour(cell, locale)}: ${outcomeText(map, cell, locale)}.`;
}

function outcomeText(map: Named, cell: MapCell, locale?: string): string {
  const { leaderId, carrying, margin } = cell;
  if (leaderId === null || margin === null) return 'your limits leave no scenario';
  const name = scenarioOf(map, leaderId).label;
  const cut = `use must be cut by ${percent(-margin.value, { locale })}`;
  if (carrying === 'none') return `no scenario carries the plan; ${name} is nearest, but ${cut}`;
  const leads = `${name} leads${leadText(map, cell, locale)}`;
  if (carrying === 'another') return `${leads}, but does not carry the plan as another does: ${cut}`;
  return `${leads}, with an energy margin of ${marginFigure(margin, locale)}`;
}

function leadText(map: Named, { leadPoints, secondId }: MapCell, locale?: string): string {
  if (secondId === null) return ', alone';
  const second = scenarioOf(map, secondId).label;
  if (leadPoints === null)
    return ` ${second}, which has a figure that you do not accept or that is not known`;
  return ` ${second} by ${withUnit(leadPoints, 'points', { digits: 1, locale })} of 100`;
}

/** Shares of the method's colour in a cell, per cent: dark enough to tell, light enough to read ink on. */
const [leastDepth, mostDepth] = [12, 42];
/** From this lead on a cell is as deep as it gets, points. */
const deepestLead = 40;

/** How deep the colour of a cell is, per cent; deepest where no score parts the first two. */
export function cellDepth({ leadPoints, carrying }: Pick<MapCell, 'leadPoints' | 'carrying'>): number {
  if (carrying === 'none') return leastDepth;
  const share = leadPoints === null ? 1 : Math.min(1, leadPoints / deepestLead);
  return Math.round(leastDepth + share * (mostDepth - leastDepth));
}
