import type { HubLoad } from '../../../shared-types/hub-item.ts';
import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectOwned } from '../statements.ts';
import type { KindPart } from './kind-part.ts';
import { readOutput, writeOutputs } from './ports.ts';

type Converter = KindPart<'converter'>;

interface ConverterRow {
  readonly efficiency: number;
  readonly start_speed_kmh: number;
  readonly hub_load: HubLoad;
  readonly series_capacitor_uf: number;
}

export function writeConverter(write: WriteDb, itemId: string, converter: Converter): void {
  const row: ConverterRow = {
    efficiency: converter.efficiency,
    start_speed_kmh: converter.startSpeedKmh,
    hub_load: converter.load,
    series_capacitor_uf: converter.seriesCapacitorUF,
  };
  insertRow(write, 'converters', { item_id: itemId, ...row });
  writeOutputs(write, itemId, [converter.output]);
}

export function readConverter(read: ReadDb, itemId: string): Converter {
  const row = selectOwned(read, 'SELECT * FROM converters WHERE item_id = ?', itemId) as ConverterRow;
  return {
    kind: 'converter',
    efficiency: row.efficiency,
    startSpeedKmh: row.start_speed_kmh,
    load: row.hub_load,
    seriesCapacitorUF: row.series_capacitor_uf,
    output: readOutput(read, itemId),
  };
}
