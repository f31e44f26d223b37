import type { NightKind, Nights } from '../../shared-types/tour.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { insertRow, selectAll } from './statements.ts';

/** What the row of a leg says about its nights; their kinds have a table of their own. */
export interface NightColumns {
  readonly nights_by: Nights['by'];
  readonly wall_outlets: number;
  readonly post_outlets: number;
}

export function nightColumns(nights: Nights): NightColumns {
  return { nights_by: nights.by, wall_outlets: nights.wallOutlets, post_outlets: nights.postOutlets };
}

export function writeNightKinds(write: WriteDb, tourId: string, leg: number, kinds: Nights['kinds']): void {
  kinds.forEach((night, position) =>
    insertRow(write, 'leg_nights', { tour_id: tourId, leg_position: leg, position, night }),
  );
}

export function readNights(read: ReadDb, tourId: string, leg: number, row: NightColumns): Nights {
  return {
    by: row.nights_by,
    kinds: readNightKinds(read, tourId, leg),
    wallOutlets: row.wall_outlets,
    postOutlets: row.post_outlets,
  };
}

function readNightKinds(read: ReadDb, tourId: string, leg: number): NightKind[] {
  const rows = selectAll(
    read,
    'SELECT night FROM leg_nights WHERE tour_id = ? AND leg_position = ? ORDER BY position',
    tourId,
    leg,
  ) as { night: NightKind }[];
  return rows.map((row) => row.night);
}
