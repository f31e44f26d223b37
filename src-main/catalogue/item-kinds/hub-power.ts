import type { CurveReadAt, HubPower } from '../../../shared-types/hub-item.ts';
import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectAll } from '../statements.ts';

/** A rating, or the place where a curve was read: the constraint `power_in_one_form`. The points have rows of their own. */
export type HubPowerColumns =
  | { readonly rated_w: number; readonly curve_read_at: null }
  | { readonly rated_w: null; readonly curve_read_at: CurveReadAt };

export function hubPowerColumns(power: HubPower): HubPowerColumns {
  return power.as === 'rating'
    ? { rated_w: power.ratedW, curve_read_at: null }
    : { rated_w: null, curve_read_at: power.readAt };
}

export function writeCurvePoints(write: WriteDb, itemId: string, power: HubPower): void {
  if (power.as === 'rating') return;
  power.points.forEach(({ speedKmh, powerW }, position) =>
    insertRow(write, 'hub_curve_points', {
      item_id: itemId,
      position,
      speed_kmh: speedKmh,
      power_w: powerW,
    }),
  );
}

export function readHubPower(read: ReadDb, itemId: string, row: HubPowerColumns): HubPower {
  if (row.curve_read_at === null) return { as: 'rating', ratedW: row.rated_w };
  const points = selectAll(
    read,
    'SELECT speed_kmh AS speedKmh, power_w AS powerW FROM hub_curve_points WHERE item_id = ? ORDER BY position',
    itemId,
  ) as Extract<HubPower, { as: 'curve' }>['points'];
  return { as: 'curve', readAt: row.curve_read_at, points };
}
