import type { CsvReading } from '../../../shared-types/contract.ts';
import { formatNumber } from '../../../shared-types/figures.ts';
import { countOfItems } from '../../parts/text/count-of-items.ts';

/** Enough to mend at a time; more would hide what comes below them. */
export const mostProblemsShown = 50;

/** What a file reads as, in one line. */
export function findingOf(reading: CsvReading): string {
  const good = countOfItems(reading.lines.length);
  return reading.problems.length === 0 ? `${good} to add` : `${good} read, ${linesInError(reading)}`;
}

/** A line may have several cells in error. */
export function linesInError({ problems }: CsvReading): string {
  const count = new Set(problems.map(({ line }) => line)).size;
  return count === 1 ? '1 line in error' : `${formatNumber(count)} lines in error`;
}

/** The numbers of the lines that look like something that is there already. */
export function twinsOf({ lines }: CsvReading): readonly number[] {
  return lines.filter(({ twin }) => twin !== null).map(({ line }) => line);
}

export function twinWords(count: number): string {
  return count === 1
    ? '1 line of the same kind and label as another'
    : `${formatNumber(count)} lines of the same kind and label as others`;
}
