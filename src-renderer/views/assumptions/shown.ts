import { basisWords, type UsedAssumption } from '../../../shared-types/all-assumptions.ts';
import type { ChartTable } from '../../parts/charts/chart-table.ts';

/** Which assumptions are listed. */
export interface AssumptionFilter {
  readonly basis: UsedAssumption['basis'] | 'all';
  readonly search: string;
}

export function usedByText({ usedBy }: UsedAssumption): string {
  return usedBy === null ? 'All' : usedBy.join(', ');
}

/** Those of the basis asked for in which every word of the search stands somewhere. */
export function shownAssumptions(
  all: readonly UsedAssumption[],
  { basis, search }: AssumptionFilter,
): readonly UsedAssumption[] {
  const words = search.toLowerCase().split(/\s+/u).filter(Boolean);
  return all.filter((each) => {
    const text = [each.name, each.value, each.source, usedByText(each)].join(' ').toLowerCase();
    return (basis === 'all' || each.basis === basis) && words.every((word) => text.includes(word));
  });
}

export function assumptionsTable(shown: readonly UsedAssumption[]): ChartTable {
  return {
    columns: ['Assumption', 'Value', 'Basis', 'Source', 'Used by'],
    rows: shown.map((each) => [each.name, each.value, basisWords[each.basis], each.source, usedByText(each)]),
  };
}
