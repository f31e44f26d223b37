import type { HubPower } from '../../../shared-types/item.ts';
import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectAll, selectOwned } from '../statements.ts';
import type { KindPart } from './kind-part.ts';

type GeneratorHub = KindPart<'generator-hub'>;

interface GeneratorHubRow {
  readonly replaces_g: number;
  readonly wheel_build_minor: number;
  readonly wheel_build_currency: string;
  readonly rated_w: number | null;
  readonly idle_drag_10_w: number;
  readonly idle_drag_30_w: number;
  readonly wheel_circumference_m: number;
}

export function writeGeneratorHub(write: WriteDb, itemId: string, hub: GeneratorHub): void {
  const row: GeneratorHubRow = {
    replaces_g: hub.replacesG,
    wheel_build_minor: hub.wheelBuild.minor,
    wheel_build_currency: hub.wheelBuild.currency,
    rated_w: hub.power.as === 'rating' ? hub.power.ratedW : null,
    idle_drag_10_w: hub.idleDragW10,
    idle_drag_30_w: hub.idleDragW30,
    wheel_circumference_m: hub.wheelCircumferenceM,
  };
  insertRow(write, 'generator_hubs', { item_id: itemId, ...row });
  if (hub.power.as === 'curve') writeCurve(write, itemId, hub.power.points);
}

export function readGeneratorHub(read: ReadDb, itemId: string): GeneratorHub {
  const row = selectOwned(read, 'SELECT * FROM generator_hubs WHERE item_id = ?', itemId) as GeneratorHubRow;
  return {
    kind: 'generator-hub',
    replacesG: row.replaces_g,
    wheelBuild: { minor: row.wheel_build_minor, currency: row.wheel_build_currency },
    power: row.rated_w === null ? readCurve(read, itemId) : { as: 'rating', ratedW: row.rated_w },
    idleDragW10: row.idle_drag_10_w,
    idleDragW30: row.idle_drag_30_w,
    wheelCircumferenceM: row.wheel_circumference_m,
  };
}

type Curve = Extract<HubPower, { as: 'curve' }>;

function writeCurve(write: WriteDb, itemId: string, points: Curve['points']): void {
  points.forEach(({ speedKmh, powerW }, position) =>
    insertRow(write, 'hub_curve_points', {
      item_id: itemId,
      position,
      speed_kmh: speedKmh,
      power_w: powerW,
    }),
  );
}

function readCurve(read: ReadDb, itemId: string): Curve {
  const rows = selectAll(
    read,
    'SELECT speed_kmh, power_w FROM hub_curve_points WHERE item_id = ? ORDER BY position',
    itemId,
  ) as { speed_kmh: number; power_w: number }[];
  return { as: 'curve', points: rows.map((row) => ({ speedKmh: row.speed_kmh, powerW: row.power_w })) };
}
