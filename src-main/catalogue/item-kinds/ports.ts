import type { Port, PortStandard } from '../../../shared-types/port.ts';
import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectAll } from '../statements.ts';

type Direction = 'in' | 'out';

export function writePorts(
  write: WriteDb,
  itemId: string,
  direction: Direction,
  ports: readonly Port[],
): void {
  ports.forEach(({ standard, powerW }, position) =>
    insertRow(write, 'ports', { item_id: itemId, direction, position, standard, power_w: powerW }),
  );
}

export function readPorts(read: ReadDb, itemId: string, direction: Direction): Port[] {
  const rows = selectAll(
    read,
    'SELECT standard, power_w FROM ports WHERE item_id = ? AND direction = ? ORDER BY position',
    itemId,
    direction,
  ) as { standard: PortStandard; power_w: number }[];
  return rows.map((row) => ({ standard: row.standard, powerW: row.power_w }));
}

/** The one port of an item that always has one. */
export function readPort(read: ReadDb, itemId: string, direction: Direction): Port {
  const [port] = readPorts(read, itemId, direction);
  if (port === undefined) throw new Error(`Item ${itemId} has no port ${direction}.`);
  return port;
}
