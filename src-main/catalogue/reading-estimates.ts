import type { KeptEstimate, Measure } from '../../shared-types/field-log.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { change, insertRow, selectAll } from './statements.ts';

interface KeptRow {
  readonly item_id: string;
  readonly measure: Measure;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly readings: number;
  readonly kept_on: string;
}

/** The values that were taken over from readings. */
export function listKeptEstimates(read: ReadDb): KeptEstimate[] {
  const rows = selectAll(read, 'SELECT * FROM kept_estimates ORDER BY item_id, measure') as KeptRow[];
  return rows.map(({ item_id, kept_on, ...rest }) => ({ ...rest, itemId: item_id, on: kept_on }));
}

/** Keeps what a value rested on, in place of what it rested on before. */
export function keepEstimate(write: WriteDb, { itemId, measure, on, ...figures }: KeptEstimate): void {
  change(write, 'DELETE FROM kept_estimates WHERE item_id = ? AND measure = ?', itemId, measure);
  insertRow(write, 'kept_estimates', { item_id: itemId, measure, kept_on: on, ...figures });
}
