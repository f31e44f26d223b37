import type { Port, SinkPort } from '../../../shared-types/port.ts';
import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectAll } from '../statements.ts';

type Direction = 'in' | 'out';

/** A sink has a cable, a socket that gives power has none: the constraint `cable_of_a_sink`. */
interface PortRow {
  readonly standard: Port['standard'];
  readonly power_w: number;
}
interface SinkRow extends PortRow {
  readonly cable: SinkPort['cable'];
}

export function writeInput(write: WriteDb, itemId: string, input: SinkPort): void {
  const row: SinkRow = { ...rowOf(input), cable: input.cable };
  insertRow(write, 'ports', { item_id: itemId, direction: 'in', position: 0, ...row });
}

export function writeOutputs(write: WriteDb, itemId: string, outputs: readonly Port[]): void {
  outputs.forEach((output, position) =>
    insertRow(write, 'ports', { item_id: itemId, direction: 'out', position, ...rowOf(output) }),
  );
}

/** The one port by which an item is charged. */
export function readInput(read: ReadDb, itemId: string): SinkPort {
  const row = onlyOne(readRows(read, itemId, 'in'), itemId, 'in') as SinkRow;
  return { ...portOf(row), cable: row.cable };
}

export function readOutputs(read: ReadDb, itemId: string): Port[] {
  return readRows(read, itemId, 'out').map(portOf);
}

/** The one outlet of an item that always has one. */
export function readOutput(read: ReadDb, itemId: string): Port {
  return portOf(onlyOne(readRows(read, itemId, 'out'), itemId, 'out'));
}

function readRows(read: ReadDb, itemId: string, direction: Direction): PortRow[] {
  return selectAll(
    read,
    'SELECT standard, power_w, cable FROM ports WHERE item_id = ? AND direction = ? ORDER BY position',
    itemId,
    direction,
  ) as PortRow[];
}

function onlyOne([row]: readonly PortRow[], itemId: string, direction: Direction): PortRow {
  if (row === undefined) throw new Error(`Item ${itemId} has no port ${direction}.`);
  return row;
}

function rowOf({ standard, powerW }: Port): PortRow {
  return { standard, power_w: powerW };
}

function portOf(row: PortRow): Port {
  return { standard: row.standard, powerW: row.power_w };
}
