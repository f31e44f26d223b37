import type { MapCell } from '../../../shared-types/break-even.ts';
import { daysText } from './advice-reach.ts';
import type { MapGrid } from './break-even-map.ts';
import { countLed, isCarried, regionsOf, type MapRegions } from './break-even-region.ts';

/** How sentences call a scenario. */
export type NameOf = (id: string) => string;

/** What a map shows, in a sentence without its full stop. */
export function mapFinding(cells: readonly MapCell[], nameOf: NameOf): string {
  const carried = cells.filter(isCarried);
  const leaders = countLed(carried);
  const [most] = leaders;
  if (most === undefined) return 'No scenario carries the plan on any tour of this map';
  if (leaders.length === 1) {
    const where =
      carried.length === cells.length ? 'on every tour of this map' : 'wherever one carries the plan';
    return `${nameOf(most.id)} leads ${where}`;
  }
  const regions = regionsOf(cells);
  if (regions !== null) return regionsText(regions, nameOf);
  const counts = leaders.map((each) => `${nameOf(each.id)} leads on ${each.cells}`);
  return `${counts.join(', ')} of ${cells.length} tours`;
}

function regionsText(regions: MapRegions, nameOf: NameOf): string {
  const { homeId, anyGapUpToDays, anyLengthUpToGap, beyondId, beyondIsOne, beyondIsCarried } = regions;
  const short = anyGapUpToDays > 0 ? upTo(anyGapUpToDays) : null;
  const walls = anyLengthUpToGap > 0 ? `with a wall ${bandText(1, anyLengthUpToGap)}` : null;
  const home = short !== null && walls !== null ? `${short}, and on longer tours ${walls}` : (short ?? walls);
  const beyond = `${nameOf(beyondId)} ${beyondIsOne ? 'leads' : 'mostly leads'}`;
  const where = beyondIsCarried ? '' : ' where one carries the plan';
  return `${nameOf(homeId)} leads ${home}; beyond that ${beyond}${where}`;
}

/** `up to 10 days`. */
function upTo(days: number): string {
  return days === 1 ? 'on a single day' : `up to ${daysText(days)}`;
}

/** `every night`, `every 3 days`. */
function everyText(gapDays: number): string {
  return gapDays === 1 ? 'every night' : `every ${daysText(gapDays)}`;
}

/** Where the leader changes as tours grow longer: a sentence for neighbouring gaps that are alike. */
export function mapBorders(
  { days, gapsDays }: MapGrid,
  cells: readonly MapCell[],
  nameOf: NameOf,
): readonly string[] {
  const bands: { readonly text: string; readonly from: number; to: number }[] = [];
  gapsDays.forEach((gapDays, column) => {
    const ofColumn = days.map((_, row) => cells[row * gapsDays.length + column]!);
    const text = runsText(ofColumn, nameOf);
    const last = bands.at(-1);
    if (last?.text === text) last.to = gapDays;
    else bands.push({ text, from: gapDays, to: gapDays });
  });
  return bands.map(({ text, from, to }) => `With a wall ${bandText(from, to)}: ${text}.`);
}

/** `every 3 days`, `at least every 2 days`, `every 4 to 14 days`. */
function bandText(fromDays: number, toDays: number): string {
  if (fromDays === toDays) return everyText(fromDays);
  return fromDays === 1 ? `at least ${everyText(toDays)}` : `every ${fromDays} to ${daysText(toDays)}`;
}

/** `Banks only up to 10 days, then Panel`: the leaders of a column of the map, from the shortest tour to the longest. */
function runsText(column: readonly MapCell[], nameOf: NameOf): string {
  const runs: { readonly who: string; lastDays: number }[] = [];
  for (const cell of column) {
    const who = whoText(cell, nameOf);
    const last = runs.at(-1);
    if (last?.who === who) last.lastDays = cell.days;
    else runs.push({ who, lastDays: cell.days });
  }
  if (runs.length === 1) return `${runs[0]!.who} at any length`;
  return runs
    .map(({ who, lastDays }, place) => (place === runs.length - 1 ? who : `${who} ${upTo(lastDays)}`))
    .join(', then ');
}

function whoText(cell: MapCell, nameOf: NameOf): string {
  if (cell.leaderId === null) return 'none within your limits';
  const name = nameOf(cell.leaderId);
  return isCarried(cell) ? name : `none carries the plan (nearest ${name})`;
}
