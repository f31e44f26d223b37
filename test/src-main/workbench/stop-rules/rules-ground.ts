import { demoItems, demoTours } from '../../../../db/demo/demo.ts';
import type { ItemOf } from '../../../../shared-types/item.ts';
import { usualRules, type Rules } from '../../../../shared-types/scenario.ts';
import type { Leg, Nights } from '../../../../shared-types/tour.ts';
import type { DeviceModel } from '../../../../src-main/model/storage/device.ts';
import {
  bankModels,
  chargerModels,
  ofKind,
  type CarriedItem,
} from '../../../../src-main/workbench/assemble/kit.ts';
import type { RulesGround } from '../../../../src-main/workbench/stop-rules/rules-ground.ts';
import { flowRun } from '../../../support/random-flow.ts';

const one = (id: string) => {
  const item = demoItems.find((each) => each.id === id);
  if (item === undefined) throw new Error(`the demo has no item ${id}`);
  return { item, carried: 1 };
};
const [demoBank] = ofKind([one('demo-bank-20')], 'bank');
const [demoCharger] = ofKind([one('demo-charger-30')], 'wall-charger');

/** A bank that a meter read 60 Wh of at the plug; in by 0.92, out by 0.85. */
export function bankLine(changes: Partial<ItemOf<'bank'>> = {}, carried = 1): CarriedItem<ItemOf<'bank'>> {
  return { item: { ...demoBank!.item, label: 'Bank', ...changes }, carried };
}

/** A full one gives so much at its plug. */
export const delivering = (wh: number) => ({ measuredDeliverableWh: { value: wh, on: '2027-01-02' } });

/** Two ports, 30 W by Power Delivery and 7.5 W; 30 W together. */
export function chargerLine(
  changes: Partial<ItemOf<'wall-charger'>> = {},
  carried = 1,
): CarriedItem<ItemOf<'wall-charger'>> {
  return { item: { ...demoCharger!.item, label: 'Charger', ...changes }, carried };
}

export const panelLine = one('demo-panel-20');
export const hubLine = one('demo-hub-3');

export interface LegParts {
  readonly leg: string;
  readonly days: number;
  readonly kinds: Nights['kinds'];
  readonly panelWh: number;
  readonly hubWh: number;
  readonly flatShare: number;
  readonly dayStops: Leg['dayStops'];
  readonly postOutlets: number;
}

interface GroundParts {
  readonly devices: readonly DeviceModel[];
  readonly lines: readonly CarriedItem[];
  readonly rules: Partial<Rules>;
  readonly legs: readonly Partial<LegParts>[];
  readonly airDegC: number;
}

const plainLeg: LegParts = {
  ...{ leg: 'Coast', days: 4, kinds: ['none', 'none', 'none', 'wall'], panelWh: 0, hubWh: 0, flatShare: 0 },
  ...{ dayStops: [], postOutlets: 1 },
};

/** A kit on legs that are ridden from 8 to 14 h, in steps of an hour, everything at 25 °C unless told otherwise. */
export function groundOf(parts: Partial<GroundParts> = {}): RulesGround {
  const { devices = [], lines = [bankLine(), chargerLine()], airDegC = 25 } = parts;
  const rules = { ...usualRules, ...parts.rules };
  const legs = (parts.legs ?? [{}]).map((leg) => ({ ...plainLeg, ...leg }));
  const tourLegs = legs.map(legOf);
  const banks = bankModels(ofKind(lines, 'bank'));
  const chargers = chargerModels(ofKind(lines, 'wall-charger'));
  const plans = tourLegs.map(({ dayStops, ...leg }) => ({
    ...leg,
    stops: dayStops.map(({ minutes, outlets, chance }) => ({ hours: minutes / 60, outlets, chance })),
  }));
  const { network, timeline, course } = flowRun({ devices, banks, chargers, rules }, plans, 60, { airDegC });
  return {
    ...{ rules, lines, timeline, ready: { network, course }, tour: { legs: tourLegs } },
    legs: legs.map(({ flatShare, ...leg }) => ({ ...leg, risk: { share: flatShare, low: 0, high: 1 } })),
    days: legs.flatMap(({ days, panelWh, hubWh }) =>
      Array.from({ length: days }, () => ({ panel: panelWh, hub: hubWh })),
    ),
  };
}

function legOf({ leg, days, kinds, dayStops, postOutlets }: LegParts): Leg {
  const [demo] = demoTours[0]!.legs;
  return {
    ...{ ...demo!, label: leg, days, ridingHours: 6, dayStops },
    nights: { by: 'pattern', kinds, wallOutlets: 2, postOutlets },
  };
}
