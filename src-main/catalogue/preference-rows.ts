import { criterionNames, type Criterion, type Preferences } from '../../shared-types/settings.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { limitsOf, type LimitColumns } from './limit-columns.ts';
import { putRow, selectAll } from './statements.ts';

interface ScaleRow {
  readonly criterion: Criterion;
  readonly weight: number;
  readonly satisfied: number;
  readonly unacceptable: number;
  /** null for a criterion that always counts. */
  readonly counted: 0 | 1 | null;
}

/** The scales of the criteria and, from the row of settings, the limits. */
export function readPreferences(read: ReadDb, row: LimitColumns): Preferences {
  const rows = selectAll(read, 'SELECT * FROM criterion_scales') as ScaleRow[];
  const scales = rows.map(({ criterion, counted, ...scale }) => [
    criterion,
    counted === null ? scale : { ...scale, counted: counted === 1 },
  ]);
  return { ...(Object.fromEntries(scales) as Omit<Preferences, 'limits'>), limits: limitsOf(row) };
}

/** Stores a row for each criterion; the limits are columns of the settings. */
export function saveScales(write: WriteDb, preferences: Preferences): void {
  for (const criterion of criterionNames) {
    const { weight, satisfied, unacceptable, ...extra } = preferences[criterion];
    const counted = 'counted' in extra ? Number(extra.counted) : null;
    putRow(write, 'criterion_scales', 'criterion', { criterion, weight, satisfied, unacceptable, counted });
  }
}
