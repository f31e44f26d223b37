import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectOwned } from '../statements.ts';
import type { KindPart } from './kind-part.ts';
import { measurementOf } from './measurement.ts';
import { readOutput, writeOutputs } from './ports.ts';

type Panel = KindPart<'panel'>;

interface PanelRow {
  readonly rated_w: number;
  readonly measured_rated_w: number | null;
  readonly measured_rated_on: string | null;
  readonly temperature_coefficient_pct_per_k: number;
  readonly noct_c: number;
  readonly regulator_efficiency: number;
  readonly start_w_per_m2: number;
}

export function writePanel(write: WriteDb, itemId: string, panel: Panel): void {
  const row: PanelRow = {
    rated_w: panel.ratedW,
    measured_rated_w: panel.measuredRatedW?.value ?? null,
    measured_rated_on: panel.measuredRatedW?.on ?? null,
    temperature_coefficient_pct_per_k: panel.temperatureCoefficientPctPerK,
    noct_c: panel.noctDegC,
    regulator_efficiency: panel.regulatorEfficiency,
    start_w_per_m2: panel.startWm2,
  };
  insertRow(write, 'panels', { item_id: itemId, ...row });
  writeOutputs(write, itemId, [panel.output]);
}

export function readPanel(read: ReadDb, itemId: string): Panel {
  const row = selectOwned(read, 'SELECT * FROM panels WHERE item_id = ?', itemId) as PanelRow;
  return {
    kind: 'panel',
    ratedW: row.rated_w,
    measuredRatedW: measurementOf(row.measured_rated_w, row.measured_rated_on),
    temperatureCoefficientPctPerK: row.temperature_coefficient_pct_per_k,
    noctDegC: row.noct_c,
    regulatorEfficiency: row.regulator_efficiency,
    startWm2: row.start_w_per_m2,
    output: readOutput(read, itemId),
  };
}
