import type { ItemKind } from '../../../shared-types/item.ts';
import { usualItem } from '../../../shared-types/usual-item.ts';
import type { CellReading } from './cells.ts';

/** One column of an inventory CSV, for one kind of item. */
export interface Column {
  /** The field of the draft that it fills. */
  readonly path: string;
  readonly reading: CellReading;
  /** What an empty cell stands for. Without one the cell must be filled. */
  readonly fallback?: string;
  /** The fallback does not hold for an item that is only considered: its price decides. */
  readonly unlessConsidering?: true;
  /** The form of its parent field (watt-hours or milliampere-hours, for example) that filling this column chooses. */
  readonly as?: string;
  /** Its whole parent field may be left out. */
  readonly optional?: true;
}

export type Columns = Readonly<Record<string, Column>>;

const number = (path: string): Column => ({ path, reading: 'number' });

const inForm = (as: string, path: string, fallback?: string): Column =>
  fallback === undefined ? { ...number(path), as } : { ...number(path), as, fallback };

/** ISO 4217's code for "no currency": what a usual item costs is not asked here. */
const noCurrency = 'XXX';

/** Columns that may stay empty, because an empty cell stands for what the usual item of the kind has. */
function usually(kind: ItemKind) {
  const usual: Readonly<Record<string, unknown>> = { ...usualItem(kind, noCurrency) };
  const column = (path: string, reading: CellReading): Column => ({
    path,
    reading,
    fallback: cellText(usual[path]),
  });
  return {
    number: (path: string) => column(path, 'number'),
    choice: (path: string) => column(path, 'choice'),
    flag: (path: string) => column(path, 'flag'),
  };
}

function cellText(value: unknown): string {
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);
}

/** Label and mass are the rider's to give; a price too, where the item is only considered. */
const common = (kind: ItemKind): Columns => ({
  kind: { path: 'kind', reading: 'choice' },
  label: { path: 'label', reading: 'text' },
  state: usually(kind).choice('state'),
  quantity: usually(kind).number('quantity'),
  mass_g: number('massG'),
  price: { path: 'price', reading: 'money', fallback: '0', unlessConsidering: true },
  mount: usually(kind).choice('mount'),
  notes: { path: 'notes', reading: 'text', fallback: '' },
});

const capacity = (kind: 'device' | 'bank'): Columns => ({
  capacity_wh: inForm('wh', 'capacity.wh'),
  capacity_mah: inForm('mah', 'capacity.mAh'),
  cell_v: inForm('mah', 'capacity.cellV'),
  health: usually(kind).number('health'),
});

const input: Columns = {
  input_standard: { path: 'input.standard', reading: 'choice' },
  input_w: number('input.powerW'),
};

const output: Columns = {
  output_standard: { path: 'output.standard', reading: 'choice' },
  output_w: number('output.powerW'),
};

const outputs: Columns = { outputs: { path: 'outputs', reading: 'ports' } };

// Once one activity is filled in, an empty one says that the device rests.
const device: Columns = {
  ...common('device'),
  ...capacity('device'),
  spare_batteries: usually('device').number('spareBatteries'),
  ...input,
  use_riding_w: inForm('activity', 'use.ridingW', '0'),
  use_stop_w: inForm('activity', 'use.stopW', '0'),
  use_evening_w: inForm('activity', 'use.eveningW', '0'),
  use_night_w: inForm('activity', 'use.nightW', '0'),
  use_wh_per_day: inForm('day', 'use.whPerDay'),
  // A device that counts too much is noticed; one that runs flat uncounted is noticed on the road.
  importance: usually('device').choice('importance'),
};

const bank: Columns = {
  ...common('bank'),
  ...capacity('bank'),
  measured_wh: { path: 'measuredDeliverableWh.value', reading: 'number', optional: true },
  measured_on: { path: 'measuredDeliverableWh.on', reading: 'date', optional: true },
  ...input,
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

const generatorHub: Columns = {
  ...common('generator-hub'),
  replaces_g: usually('generator-hub').number('replacesG'),
  wheel_build: { path: 'wheelBuild', reading: 'money', fallback: '0', unlessConsidering: true },
  rated_w: inForm('rating', 'power.ratedW'),
  power_curve: { path: 'power.points', reading: 'curve', as: 'curve' },
  idle_drag_10_w: usually('generator-hub').number('idleDragW10'),
  idle_drag_30_w: usually('generator-hub').number('idleDragW30'),
  wheel_circumference_m: usually('generator-hub').number('wheelCircumferenceM'),
};

const converter: Columns = {
  ...common('converter'),
  efficiency: usually('converter').number('efficiency'),
  start_speed_kmh: usually('converter').number('startSpeedKmh'),
  ...output,
};

const wallCharger: Columns = { ...common('wall-charger'), ...outputs, total_w: number('totalW') };

export const columnsOfKind: Readonly<Record<ItemKind, Columns>> = {
  device,
  bank,
  panel,
  'generator-hub': generatorHub,
  converter,
  'wall-charger': wallCharger,
  accessory: common('accessory'),
};

/** Every column there is, of whatever kind. */
export const columnNames: readonly string[] = [
  ...new Set(Object.values(columnsOfKind).flatMap((columns) => Object.keys(columns))),
];
