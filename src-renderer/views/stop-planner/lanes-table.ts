import type { StopPlan } from '../../../shared-types/stop-plan.ts';
import type { ChartTable } from '../../parts/charts/chart-table.ts';

/** The figures behind the lanes: a row for each time something hangs on a port. */
export function lanesTable({ lanes, stores }: StopPlan): ChartTable {
  return {
    columns: ['Charger', 'Port', 'What', 'From, min', 'To, min', 'At its start, W'],
    rows: lanes.flatMap(({ charger, port, spans }) =>
      spans.map(({ store, fromMinute, toMinute, startW }) => [
        charger,
        `port ${port}`,
        stores[store]!.label,
        fromMinute,
        toMinute,
        startW,
      ]),
    ),
  };
}
