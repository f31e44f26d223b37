import { randomUUID } from 'node:crypto';
import { success, type Outcome } from '../../shared-types/outcome.ts';
import type { Reading, ReadingDraft } from '../../shared-types/reading.ts';
import { inTransaction, type ReadDb, type WriteDb } from './connection.ts';
import { missingItem } from './missing-row.ts';
import { readingColumns, readingOf, type ReadingColumns } from './reading-columns.ts';
import { change, putRow, selectAll, selectOne } from './statements.ts';

type ReadingRow = ReadingColumns & { readonly id: string };

/** All readings, the newest first; those of one day in the order they came in, the last one first. */
export function listReadings(read: ReadDb): Reading[] {
  const rows = selectAll(read, 'SELECT * FROM readings ORDER BY taken_on DESC, rowid DESC') as ReadingRow[];
  return rows.map((row) => ({ ...readingOf(row), id: row.id }));
}

/** With an id replaces that reading, or puts it back; without one adds it. Fails when its item is unknown. */
export function saveReading(
  write: WriteDb,
  draft: ReadingDraft,
  id: string = randomUUID(),
): Outcome<Reading> {
  return inTransaction(write, () => {
    const missing = missingItem(write, [draft.itemId], () => 'reading.itemId');
    if (missing !== null) return missing;
    putRow(write, 'readings', 'id', { id, ...readingColumns(draft) });
    return success({ ...draft, id });
  });
}

/** The reading that was removed, for putting it back, or null when there is none of that id. */
export function removeReading(write: WriteDb, id: string): Reading | null {
  return inTransaction(write, () => {
    const row = selectOne(write, 'SELECT * FROM readings WHERE id = ?', id) as ReadingRow | undefined;
    change(write, 'DELETE FROM readings WHERE id = ?', id);
    return row === undefined ? null : { ...readingOf(row), id: row.id };
  });
}
