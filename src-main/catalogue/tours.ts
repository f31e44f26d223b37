import { randomUUID } from 'node:crypto';
import { success, type Outcome } from '../../shared-types/outcome.ts';
import type { Tour, TourDraft } from '../../shared-types/tour.ts';
import { bicycleColumns, bicycleOf, type BicycleColumns } from './bicycle-columns.ts';
import { inTransaction, type ReadDb, type WriteDb } from './connection.ts';
import { readLegs, writeLegs } from './legs.ts';
import { missingItem } from './missing-row.ts';
import { change, insertRow, putRow, selectAll, selectOne } from './statements.ts';

interface TourRow extends BicycleColumns {
  readonly id: string;
  readonly label: string;
  readonly start_date: string;
  readonly rider_mass_kg: number;
  readonly bicycle_mass_kg: number;
  readonly rider_w: number;
  readonly notes: string;
}

/** All tours, by label. */
export function listTours(read: ReadDb): Tour[] {
  const rows = selectAll(read, 'SELECT * FROM tours ORDER BY label COLLATE NOCASE, id') as TourRow[];
  return rows.map((row) => tourOf(read, row));
}

export function findTour(read: ReadDb, id: string): Tour | null {
  const row = selectOne(read, 'SELECT * FROM tours WHERE id = ?', id) as TourRow | undefined;
  return row === undefined ? null : tourOf(read, row);
}

/** With an id replaces that tour, or puts it back; without one adds it. Fails when it leaves an unknown item at home. */
export function saveTour(write: WriteDb, draft: TourDraft, id: string = randomUUID()): Outcome<Tour> {
  return inTransaction(write, () => {
    const missing = missingItem(write, draft.leftAtHome, (index) => `tour.leftAtHome.${index}`);
    if (missing !== null) return missing;
    putRow(write, 'tours', 'id', { ...rowOf(id, draft) });
    replaceParts(write, id, draft);
    return success({ ...draft, id });
  });
}

/** The tour that was removed, for putting it back, or null when there is none of that id. */
export function removeTour(write: WriteDb, id: string): Tour | null {
  return inTransaction(write, () => {
    const tour = findTour(write, id);
    change(write, 'DELETE FROM tours WHERE id = ?', id);
    return tour;
  });
}

function replaceParts(write: WriteDb, id: string, draft: TourDraft): void {
  change(write, 'DELETE FROM legs WHERE tour_id = ?', id);
  change(write, 'DELETE FROM tour_left_at_home WHERE tour_id = ?', id);
  writeLegs(write, id, draft.legs);
  draft.leftAtHome.forEach((itemId, position) =>
    insertRow(write, 'tour_left_at_home', { tour_id: id, position, item_id: itemId }),
  );
}

function rowOf(id: string, draft: TourDraft): TourRow {
  return {
    id,
    label: draft.label,
    start_date: draft.startDate,
    rider_mass_kg: draft.riderMassKg,
    bicycle_mass_kg: draft.bicycleMassKg,
    rider_w: draft.riderW,
    ...bicycleColumns(draft.bicycle),
    notes: draft.notes,
  };
}

function tourOf(read: ReadDb, row: TourRow): Tour {
  return {
    id: row.id,
    label: row.label,
    startDate: row.start_date,
    legs: readLegs(read, row.id),
    leftAtHome: readLeftAtHome(read, row.id),
    riderMassKg: row.rider_mass_kg,
    bicycleMassKg: row.bicycle_mass_kg,
    riderW: row.rider_w,
    bicycle: bicycleOf(row),
    notes: row.notes,
  };
}

function readLeftAtHome(read: ReadDb, tourId: string): string[] {
  const rows = selectAll(
    read,
    'SELECT item_id FROM tour_left_at_home WHERE tour_id = ? ORDER BY position',
    tourId,
  ) as { item_id: string }[];
  return rows.map((row) => row.item_id);
}
