import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectOwned } from '../statements.ts';
import { capacityColumns, capacityOf, type CapacityColumns } from './capacity.ts';
import type { KindPart } from './kind-part.ts';
import { measurementOf } from './measurement.ts';
import { readInput, readOutputs, writeInput, writeOutputs } from './ports.ts';

type Bank = KindPart<'bank'>;

type BankRow = CapacityColumns & {
  readonly measured_deliverable_wh: number | null;
  readonly measured_deliverable_on: string | null;
  readonly health: number;
  readonly efficiency_in: number;
  readonly efficiency_out: number;
  readonly charges_while_serving: 0 | 1;
  readonly standby_w: number;
  readonly self_discharge_pct_per_month: number;
  readonly lights: number;
};

export function writeBank(write: WriteDb, itemId: string, bank: Bank): void {
  const row: BankRow = {
    ...capacityColumns(bank.capacity),
    measured_deliverable_wh: bank.measuredDeliverableWh?.value ?? null,
    measured_deliverable_on: bank.measuredDeliverableWh?.on ?? null,
    health: bank.health,
    efficiency_in: bank.efficiencyIn,
    efficiency_out: bank.efficiencyOut,
    charges_while_serving: bank.chargesWhileServing ? 1 : 0,
    standby_w: bank.standbyW,
    self_discharge_pct_per_month: bank.selfDischargePctPerMonth,
    lights: bank.lights,
  };
  insertRow(write, 'banks', { item_id: itemId, ...row });
  writeInput(write, itemId, bank.input);
  writeOutputs(write, itemId, bank.outputs);
}

export function readBank(read: ReadDb, itemId: string): Bank {
  const row = selectOwned(read, 'SELECT * FROM banks WHERE item_id = ?', itemId) as BankRow;
  return {
    kind: 'bank',
    capacity: capacityOf(row),
    measuredDeliverableWh: measurementOf(row.measured_deliverable_wh, row.measured_deliverable_on),
    health: row.health,
    input: readInput(read, itemId),
    outputs: readOutputs(read, itemId),
    efficiencyIn: row.efficiency_in,
    efficiencyOut: row.efficiency_out,
    chargesWhileServing: row.charges_while_serving === 1,
    standbyW: row.standby_w,
    selfDischargePctPerMonth: row.self_discharge_pct_per_month,
    lights: row.lights,
  };
}
