import type { ItemKind } from '../../../shared-types/item.ts';
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

const number = (path: string, fallback?: string): Column =>
  fallback === undefined ? { path, reading: 'number' } : { path, reading: 'number', fallback };

const inForm = (as: string, path: string, fallback?: string): Column => ({ ...number(path, fallback), as });

/** Label and mass are the rider's to give; the rest is what most rows would say. */
const common = (mount: string): Columns => ({
  kind: { path: 'kind', reading: 'choice' },
  label: { path: 'label', reading: 'text' },
  state: { path: 'state', reading: 'choice', fallback: 'owned' },
  quantity: number('quantity', '1'),
  mass_g: number('massG'),
  price: { path: 'price', reading: 'money', fallback: '0', unlessConsidering: true },
  mount: { path: 'mount', reading: 'choice', fallback: mount },
  notes: { path: 'notes', reading: 'text', fallback: '' },
});

const capacity: Columns = {
  capacity_wh: inForm('wh', 'capacity.wh'),
  capacity_mah: inForm('mah', 'capacity.mAh'),
  cell_v: inForm('mah', 'capacity.cellV'),
  health: number('health', '1'),
};

const input: Columns = {
  input_standard: { path: 'input.standard', reading: 'choice' },
  input_w: number('input.powerW'),
};

const output: Columns = {
  output_standard: { path: 'output.standard', reading: 'choice' },
  output_w: number('output.powerW'),
};

const outputs: Columns = { outputs: { path: 'outputs', reading: 'ports' } };

const device: Columns = {
  ...common('handlebar'),
  ...capacity,
  spare_batteries: number('spareBatteries', '0'),
  ...input,
  use_riding_w: inForm('activity', 'use.ridingW', '0'),
  use_stop_w: inForm('activity', 'use.stopW', '0'),
  use_evening_w: inForm('activity', 'use.eveningW', '0'),
  use_night_w: inForm('activity', 'use.nightW', '0'),
  use_wh_per_day: inForm('day', 'use.whPerDay'),
  // A device that counts too much is noticed; one that runs flat uncounted is noticed on the road.
  importance: { path: 'importance', reading: 'choice', fallback: 'must-have' },
};

// The fallbacks of the sources below are of the usual size (common practice, no source), as the forms suggest them.
const bank: Columns = {
  ...common('rear-rack'),
  ...capacity,
  measured_wh: { path: 'measuredDeliverableWh.value', reading: 'number', optional: true },
  measured_on: { path: 'measuredDeliverableWh.on', reading: 'date', optional: true },
  ...input,
  ...outputs,
  efficiency_in: number('efficiencyIn', '0.92'),
  efficiency_out: number('efficiencyOut', '0.85'),
  charges_while_serving: { path: 'chargesWhileServing', reading: 'flag', fallback: 'no' },
  standby_w: number('standbyW', '0'),
  self_discharge_pct_per_month: number('selfDischargePctPerMonth', '2'),
  lights: number('lights', '4'),
};

const panel: Columns = {
  ...common('rear-rack'),
  rated_w: number('ratedW'),
  measured_w: { path: 'measuredRatedW.value', reading: 'number', optional: true },
  measured_on: { path: 'measuredRatedW.on', reading: 'date', optional: true },
  temperature_coefficient_pct_per_k: number('temperatureCoefficientPctPerK', '-0.4'),
  noct_c: number('noctDegC', '45'),
  regulator_efficiency: number('regulatorEfficiency', '0.85'),
  start_w_per_m2: number('startWm2', '100'),
  ...output,
};

const generatorHub: Columns = {
  ...common('front-wheel'),
  // Nothing replaced, no wheel to build: the rider sees the whole mass until the figure is filled in.
  replaces_g: number('replacesG', '0'),
  wheel_build: { path: 'wheelBuild', reading: 'money', fallback: '0', unlessConsidering: true },
  rated_w: inForm('rating', 'power.ratedW'),
  power_curve: { path: 'power.points', reading: 'curve', as: 'curve' },
  idle_drag_10_w: number('idleDragW10', '0.5'),
  idle_drag_30_w: number('idleDragW30', '2.5'),
  wheel_circumference_m: number('wheelCircumferenceM', '2.155'),
};

const converter: Columns = {
  ...common('handlebar'),
  efficiency: number('efficiency', '0.8'),
  start_speed_kmh: number('startSpeedKmh', '10'),
  ...output,
};

const wallCharger: Columns = { ...common('rear-rack'), ...outputs, total_w: number('totalW') };

export const columnsOfKind: Readonly<Record<ItemKind, Columns>> = {
  device,
  bank,
  panel,
  'generator-hub': generatorHub,
  converter,
  'wall-charger': wallCharger,
  accessory: common('rear-rack'),
};

/** Every column there is, of whatever kind. */
export const columnNames: readonly string[] = [
  ...new Set(Object.values(columnsOfKind).flatMap((columns) => Object.keys(columns))),
];
