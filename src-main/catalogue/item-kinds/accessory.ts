import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectOwned } from '../statements.ts';
import type { KindPart } from './kind-part.ts';

type Accessory = KindPart<'accessory'>;

interface AccessoryRow {
  readonly for_hub: 0 | 1;
}

export function writeAccessory(write: WriteDb, itemId: string, accessory: Accessory): void {
  const row: AccessoryRow = { for_hub: accessory.forHub ? 1 : 0 };
  insertRow(write, 'accessories', { item_id: itemId, ...row });
}

export function readAccessory(read: ReadDb, itemId: string): Accessory {
  const row = selectOwned(read, 'SELECT * FROM accessories WHERE item_id = ?', itemId) as AccessoryRow;
  return { kind: 'accessory', forHub: row.for_hub === 1 };
}
