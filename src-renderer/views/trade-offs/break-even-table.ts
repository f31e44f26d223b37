import type { BreakEvenMap, MapCell } from '../../../shared-types/break-even.ts';
import type { ChartTable } from '../../parts/charts/chart-table.ts';
import { scenarioOf } from './break-even-cell.ts';

const carried = { leader: 'yes', another: 'only by another', none: 'by none' } as const;
const hundred = 100;

/** The figures behind the map: a row for each tour. */
export function breakEvenTable(map: BreakEvenMap): ChartTable {
  return {
    columns: [
      'Days of the tour',
      'Days between walls',
      'First',
      'Plan carried',
      'Margin, %',
      'Lead, points',
      'Second',
    ],
    rows: map.cells.map((cell) => rowOf(map, cell)),
  };
}

function rowOf(map: BreakEvenMap, cell: MapCell): readonly (string | number)[] {
  const nameOf = (id: string | null): string => (id === null ? 'none' : scenarioOf(map, id).label);
  return [
    cell.days,
    cell.gapDays,
    nameOf(cell.leaderId),
    carried[cell.carrying],
    cell.margin === null ? NaN : hundred * cell.margin.value,
    cell.leadPoints ?? NaN,
    nameOf(cell.secondId),
  ];
}
