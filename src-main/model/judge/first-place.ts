import type { ScoredRow } from '../../../shared-types/comparison.ts';
import { criteria, type Criterion } from '../../../shared-types/settings.ts';

/** Scores are shares of 1, leads are told in points of 100. */
const pointsPerScore = 100;

/** By how much one scenario leads another by score alone, points of 100. */
export function leadPoints(rows: readonly ScoredRow[], firstId: string, secondId: string): number {
  return pointsPerScore * (rowOf(rows, firstId).score - rowOf(rows, secondId).score);
}

/** Whether none ranks before a scenario; what a limit leaves out holds no place. */
export function holdsFirst(rows: readonly ScoredRow[], id: string): boolean {
  const { rank, excludedBy } = rowOf(rows, id);
  return rank === 1 && excludedBy.length === 0;
}

/** The scenario that ranks first; null where limits leave out all. */
export function leaderOf(rows: readonly ScoredRow[]): string | null {
  const [first] = rows;
  return first === undefined || first.excludedBy.length > 0 ? null : first.id;
}

/**
 * What other than the score takes the first place from a scenario, as a clause that names scenarios by label; null when the
 * score does.
 *
 * @param before the rows where it still holds its place, close by
 * @param after the rows where it does not
 */
export function becauseOf(
  before: readonly ScoredRow[],
  after: readonly ScoredRow[],
  firstId: string,
  labelOf: (id: string) => string,
): string | null {
  const leader = leaderOf(after);
  const first = rowOf(after, firstId);
  const mark = markOf(first);
  const lost = mark === null ? null : `${labelOf(firstId)} ${mark}`;
  if (leader === null || first.excludedBy.length > 0) return lost;
  const overtakes = leadPoints(before, leader, firstId) <= 0 && leadPoints(after, leader, firstId) > 0;
  if (overtakes) return null;
  const gain = gainOf(rowOf(before, leader));
  return lost ?? (gain === null ? null : `${labelOf(leader)} ${gain}`);
}

/** What keeps a row behind others whatever it scores, as the rest of a sentence about it. */
function markOf({ excludedBy, notKnown, unacceptable }: ScoredRow): string | null {
  if (excludedBy.length > 0) return excludedBy.map(({ text }) => text).join('; ');
  if (notKnown.length > 0) return `has no known figure for ${named(notKnown)}`;
  return unacceptable.length > 0 ? `has an unacceptable ${named(unacceptable)}` : null;
}

/** The end of what kept a row behind, likewise. */
function gainOf({ excludedBy, notKnown, unacceptable }: ScoredRow): string | null {
  if (excludedBy.length > 0) return 'comes within your limits';
  if (notKnown.length > 0) return `has a known figure for ${named(notKnown)}`;
  return unacceptable.length > 0 ? `no longer has an unacceptable ${named(unacceptable)}` : null;
}

function named(names: readonly Criterion[]): string {
  return names.map((name) => `"${criteria[name].label}"`).join(' and ');
}

function rowOf(rows: readonly ScoredRow[], id: string): ScoredRow {
  const row = rows.find((each) => each.id === id);
  if (row === undefined) throw new Error(`There is no scored row ${id}.`);
  return row;
}
