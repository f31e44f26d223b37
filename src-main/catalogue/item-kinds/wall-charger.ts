import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectOwned } from '../statements.ts';
import type { KindPart } from './kind-part.ts';
import { readOutputs, writeOutputs } from './ports.ts';

type WallCharger = KindPart<'wall-charger'>;

interface WallChargerRow {
  readonly total_w: number;
}

export function writeWallCharger(write: WriteDb, itemId: string, charger: WallCharger): void {
  insertRow(write, 'wall_chargers', { item_id: itemId, total_w: charger.totalW });
  writeOutputs(write, itemId, charger.outputs);
}

export function readWallCharger(read: ReadDb, itemId: string): WallCharger {
  const row = selectOwned(read, 'SELECT * FROM wall_chargers WHERE item_id = ?', itemId) as WallChargerRow;
  return { kind: 'wall-charger', outputs: readOutputs(read, itemId), totalW: row.total_w };
}
