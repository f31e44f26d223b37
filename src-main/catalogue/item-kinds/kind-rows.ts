import type { ItemKind } from '../../../shared-types/item.ts';
import type { ReadDb, WriteDb } from '../connection.ts';
import { change } from '../statements.ts';
import { readAccessory, writeAccessory } from './accessory.ts';
import { readBank, writeBank } from './bank.ts';
import { readConverter, writeConverter } from './converter.ts';
import { readDevice, writeDevice } from './device.ts';
import { readGeneratorHub, writeGeneratorHub } from './generator-hub.ts';
import type { KindPart } from './kind-part.ts';
import { readPanel, writePanel } from './panel.ts';
import { readWallCharger, writeWallCharger } from './wall-charger.ts';

/** Stores the figures that only this kind has. A new kind needs a case here and in `readKindPart`. */
export function writeKindPart(write: WriteDb, itemId: string, part: KindPart): void {
  switch (part.kind) {
    case 'device':
      writeDevice(write, itemId, part);
      break;
    case 'bank':
      writeBank(write, itemId, part);
      break;
    case 'panel':
      writePanel(write, itemId, part);
      break;
    case 'generator-hub':
      writeGeneratorHub(write, itemId, part);
      break;
    case 'converter':
      writeConverter(write, itemId, part);
      break;
    case 'wall-charger':
      writeWallCharger(write, itemId, part);
      break;
    case 'accessory':
      writeAccessory(write, itemId, part);
      break;
  }
}

export function readKindPart(read: ReadDb, itemId: string, kind: ItemKind): KindPart {
  switch (kind) {
    case 'device':
      return readDevice(read, itemId);
    case 'bank':
      return readBank(read, itemId);
    case 'panel':
      return readPanel(read, itemId);
    case 'generator-hub':
      return readGeneratorHub(read, itemId);
    case 'converter':
      return readConverter(read, itemId);
    case 'wall-charger':
      return readWallCharger(read, itemId);
    case 'accessory':
      return readAccessory(read, itemId);
  }
}

const tables = [
  'devices',
  'banks',
  'panels',
  'generator_hubs',
  'converters',
  'wall_chargers',
  'accessories',
  'ports',
];

/** Clears every kind's table, because a saved item may have been of another kind before. */
export function clearKindPart(write: WriteDb, itemId: string): void {
  for (const table of tables) change(write, `DELETE FROM ${table} WHERE item_id = ?`, itemId);
}
