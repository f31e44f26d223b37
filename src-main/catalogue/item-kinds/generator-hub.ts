import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectOwned } from '../statements.ts';
import { hubPowerColumns, readHubPower, writeCurvePoints, type HubPowerColumns } from './hub-power.ts';
import type { KindPart } from './kind-part.ts';
import { measurementOf } from './measurement.ts';

type GeneratorHub = KindPart<'generator-hub'>;

type GeneratorHubRow = HubPowerColumns & {
  readonly replaces_g: number;
  readonly rim_cost_minor: number;
  readonly rim_cost_currency: string;
  readonly rim_mass_g: number;
  readonly rim_replaces_g: number;
  readonly spokes_cost_minor: number;
  readonly spokes_cost_currency: string;
  readonly spokes_mass_g: number;
  readonly spokes_replaces_g: number;
  readonly labour_minor: number;
  readonly labour_currency: string;
  readonly measured_yield: number | null;
  readonly measured_yield_on: string | null;
  readonly idle_drag_10_w: number;
  readonly idle_drag_30_w: number;
  readonly wheel_circumference_m: number;
  readonly rated_circumference_m: number;
};

export function writeGeneratorHub(write: WriteDb, itemId: string, hub: GeneratorHub): void {
  insertRow(write, 'generator_hubs', { item_id: itemId, ...rowOf(hub) });
  writeCurvePoints(write, itemId, hub.power);
}

export function readGeneratorHub(read: ReadDb, itemId: string): GeneratorHub {
  const row = selectOwned(read, 'SELECT * FROM generator_hubs WHERE item_id = ?', itemId) as GeneratorHubRow;
  return {
    kind: 'generator-hub',
    replacesG: row.replaces_g,
    rim: {
      cost: { minor: row.rim_cost_minor, currency: row.rim_cost_currency },
      massG: row.rim_mass_g,
      replacesG: row.rim_replaces_g,
    },
    spokes: {
      cost: { minor: row.spokes_cost_minor, currency: row.spokes_cost_currency },
      massG: row.spokes_mass_g,
      replacesG: row.spokes_replaces_g,
    },
    labour: { minor: row.labour_minor, currency: row.labour_currency },
    power: readHubPower(read, itemId, row),
    measuredYield: measurementOf(row.measured_yield, row.measured_yield_on),
    idleDragW10: row.idle_drag_10_w,
    idleDragW30: row.idle_drag_30_w,
    wheelCircumferenceM: row.wheel_circumference_m,
    ratedCircumferenceM: row.rated_circumference_m,
  };
}

function rowOf(hub: GeneratorHub): GeneratorHubRow {
  return {
    ...hubPowerColumns(hub.power),
    replaces_g: hub.replacesG,
    rim_cost_minor: hub.rim.cost.minor,
    rim_cost_currency: hub.rim.cost.currency,
    rim_mass_g: hub.rim.massG,
    rim_replaces_g: hub.rim.replacesG,
    spokes_cost_minor: hub.spokes.cost.minor,
    spokes_cost_currency: hub.spokes.cost.currency,
    spokes_mass_g: hub.spokes.massG,
    spokes_replaces_g: hub.spokes.replacesG,
    labour_minor: hub.labour.minor,
    labour_currency: hub.labour.currency,
    measured_yield: hub.measuredYield?.value ?? null,
    measured_yield_on: hub.measuredYield?.on ?? null,
    idle_drag_10_w: hub.idleDragW10,
    idle_drag_30_w: hub.idleDragW30,
    wheel_circumference_m: hub.wheelCircumferenceM,
    rated_circumference_m: hub.ratedCircumferenceM,
  };
}
