import type { ItemKind } from '../../../shared-types/item.ts';
import { common, inForm, number, output, usually, type Columns } from './column.ts';
import { input } from './input-columns.ts';
import { converterColumns, generatorHubColumns } from './hub-columns.ts';

const capacity = (kind: 'device' | 'bank'): Columns => ({
  capacity_wh: inForm('wh', 'capacity.wh'),
  capacity_mah: inForm('mah', 'capacity.mAh'),
  cell_v: inForm('mah', 'capacity.cellV'),
  health: usually(kind).number('health'),
});

const outputs: Columns = { outputs: { path: 'outputs', reading: 'ports' } };

// Once one activity is filled in, an empty one says that the device rests.
const device: Columns = {
  ...common('device'),
  ...capacity('device'),
  spare_batteries: usually('device').number('spareBatteries'),
  ...input('device'),
  use_riding_w: inForm('activity', 'use.ridingW', '0'),
  use_stop_w: inForm('activity', 'use.stopW', '0'),
  use_evening_w: inForm('activity', 'use.eveningW', '0'),
  use_night_w: inForm('activity', 'use.nightW', '0'),
  use_wh_per_day: inForm('day', 'use.whPerDay'),
  plugged_w: usually('device').number('pluggedW'),
  // A device that counts too much is noticed; one that runs flat uncounted is noticed on the road.
  importance: usually('device').choice('importance'),
};

const bank: Columns = {
  ...common('bank'),
  ...capacity('bank'),
  measured_wh: { path: 'measuredDeliverableWh.value', reading: 'number', optional: true },
  measured_on: { path: 'measuredDeliverableWh.on', reading: 'date', optional: true },
  ...input('bank'),
  ...outputs,
  efficiency_in: usually('bank').number('efficiencyIn'),
  efficiency_out: usually('bank').number('efficiencyOut'),
  charges_while_serving: usually('bank').flag('chargesWhileServing'),
  standby_w: usually('bank').number('standbyW'),
  self_discharge_pct_per_month: usually('bank').number('selfDischargePctPerMonth'),
  lights: usually('bank').number('lights'),
};

const panel: Columns = {
  ...common('panel'),
  rated_w: number('ratedW'),
  measured_w: { path: 'measuredRatedW.value', reading: 'number', optional: true },
  measured_on: { path: 'measuredRatedW.on', reading: 'date', optional: true },
  temperature_coefficient_pct_per_k: usually('panel').number('temperatureCoefficientPctPerK'),
  noct_c: usually('panel').number('noctDegC'),
  regulator_efficiency: usually('panel').number('regulatorEfficiency'),
  start_w_per_m2: usually('panel').number('startWm2'),
  ...output,
};

const wallCharger: Columns = { ...common('wall-charger'), ...outputs, total_w: number('totalW') };

const accessory: Columns = { ...common('accessory'), for_hub: usually('accessory').flag('forHub') };

export const columnsOfKind: Readonly<Record<ItemKind, Columns>> = {
  device,
  bank,
  panel,
  'generator-hub': generatorHubColumns,
  converter: converterColumns,
  'wall-charger': wallCharger,
  accessory,
};

/** Every column there is, of whatever kind. */
export const columnNames: readonly string[] = [
  ...new Set(Object.values(columnsOfKind).flatMap((columns) => Object.keys(columns))),
];
