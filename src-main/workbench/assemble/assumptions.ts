import type { Assumption } from '../../../shared-types/comparison.ts';
import type { KeptEstimate } from '../../../shared-types/field-log.ts';
import { labelWh, type Item, type ItemOf } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import { usualRisk, type Settings } from '../../../shared-types/settings.ts';
import { bedtime, ridesFrom, wakesAt } from '../../model/flow/day-schedule.ts';
import { meanUseWhPerDay } from '../../model/flow/planned-use.ts';
import type { Timeline } from '../../model/flow/timeline.ts';
import { besideBodyDegC, tentWarmerK } from '../../model/storage/cell-warmth.ts';
import { chargeFromDegC, chargeToDegC } from '../../model/storage/charging-temperature.ts';
import { usableShare } from '../../model/storage/cold.ts';
import { deviceEfficiencyIn, type DeviceModel } from '../../model/storage/device.ts';
import { taperStart } from '../../model/storage/taper.ts';
import { keptInUse } from '../field-log/kept-in-use.ts';
import { figureFromReadings, measuredSource, usesFromReadings } from './from-readings.ts';
import { judgeAssumptions, lifeAssumptions } from './judge-assumptions.ts';
import { ofKind, travellingItems, type CarriedItem } from './kit.ts';
import { placementWords } from './placement-words.ts';
import { hubAssumptions, rideAssumptions } from './ride-assumptions.ts';
import { decimal, inPercent } from './words.ts';
import { skyAssumptions } from './sky-assumptions.ts';
import type { TourModel } from './tour.ts';

/** What comes along in every scenario, and which figures of the catalogue are from readings. */
export interface Along {
  readonly devices: readonly DeviceModel[];
  readonly items: readonly Item[];
  readonly kept: readonly KeptEstimate[];
}

/** The figures every scenario of a comparison rests on. */
export function sharedAssumptions(
  { tour, places, timeline }: TourModel,
  { devices, items, kept }: Along,
  settings: Pick<Settings, 'sky' | 'risk' | 'money' | 'frontLoad' | 'currency'>,
): readonly Assumption[] {
  const { sky, risk } = settings;
  const stations = [...new Set(places.map(({ station }) => station.place))].join(', ');
  return [
    ...skyAssumptions(tour, stations, sky),
    {
      name: 'Day',
      value: `up at ${wakesAt} h, riding from ${ridesFrom} h, bed at ${bedtime} h, mean solar time`,
      basis: 'default',
      source: 'common practice',
    },
    {
      name: 'Start of the tour',
      value: 'every battery full',
      basis: 'default',
      source: 'common practice',
    },
    {
      name: 'Daily use',
      value: `strays by ${inPercent(risk.useSpread)} of the plan, each device and day on its own (lognormal)`,
      basis: risk.useSpread === usualRisk.useSpread ? 'default' : 'rider',
      source: 'common practice',
    },
    {
      name: 'Energy margin',
      value: `held in ${inPercent(risk.confidence)} of the histories`,
      basis: risk.confidence === usualRisk.confidence ? 'default' : 'rider',
      source: 'settings',
    },
    {
      name: 'Charging a device',
      value: `${inPercent(deviceEfficiencyIn)} of the plug's energy is stored`,
      basis: 'default',
      source: 'common practice, 85 to 90 %',
    },
    {
      name: 'Charge taper',
      value: `from ${inPercent(taperStart)} full`,
      basis: 'default',
      source: 'Kollmeyer 2018, doi 10.17632/wykht8y7tg.1',
    },
    ...rideAssumptions(tour),
    ...devices.map((device) => deviceAssumption(device, timeline)),
    ...usesFromReadings(travellingItems(items, tour.leftAtHome), kept),
    ...judgeAssumptions(settings),
    { name: 'Step', value: `${decimal(timeline.stepHours * 60)} min`, basis: 'rider', source: 'settings' },
  ];
}

function deviceAssumption(device: DeviceModel, timeline: Timeline): Assumption {
  const use = decimal(meanUseWhPerDay([device], timeline), 1);
  return {
    name: device.label,
    value: `${decimal(device.capacityWh, 1)} Wh, ${use} Wh a day, ${device.mustHave ? 'must-have' : 'nice-to-have'}`,
    basis: 'label',
    source: 'catalogue',
  };
}

/** The figures of one scenario's own kit, saying for each whether it is a label's or the rider's own measurement. */
export function kitAssumptions(
  scenario: Scenario,
  lines: readonly CarriedItem[],
  kept: readonly KeptEstimate[],
): readonly Assumption[] {
  return [
    ...ofKind(lines, 'bank').flatMap(({ item }) => [
      bankAssumption(item, kept),
      ...figureFromReadings(item, 'bank-efficiency', kept),
    ]),
    ...cellAssumptions(scenario),
    ...ofKind(lines, 'panel').flatMap(({ item }) => [
      panelAssumption(item, kept),
      placementAssumption(scenario),
    ]),
    ...hubAssumptions(lines, scenario.rules, kept),
    ...ofKind(lines, 'wall-charger').map(({ item }) => chargerAssumption(item)),
    ...lifeAssumptions(lines),
  ];
}

function bankAssumption(bank: ItemOf<'bank'>, kept: readonly KeptEstimate[]): Assumption {
  const measured = bank.measuredDeliverableWh;
  if (measured !== null)
    return {
      name: bank.label,
      value: `${decimal(measured.value, 1)} Wh at the plug, full to empty`,
      basis: 'measured',
      source: measuredSource(bank, 'bank-delivery', measured.on, kept),
    };
  // Where readings gave the efficiency in, it has a line of its own.
  const intoCells =
    keptInUse(bank, 'bank-efficiency', kept) === null ? `${inPercent(bank.efficiencyIn)} in, ` : '';
  return {
    name: bank.label,
    value: `${decimal(labelWh(bank.capacity) * bank.health, 1)} Wh in the cells, ${intoCells}${inPercent(bank.efficiencyOut)} out`,
    basis: 'label',
    source: `label × health ${inPercent(bank.health)}`,
  };
}

/** What the cold does to cells, and where the rider keeps them. */
function cellAssumptions({ rules }: Scenario): readonly Assumption[] {
  const inCold = [0, -10].map((degC) => `${inPercent(usableShare(degC))} at ${decimal(degC)} °C`).join(', ');
  return [
    {
      name: 'Cells in the cold',
      value: `give ${inCold} of their capacity; none is charged below ${chargeFromDegC} °C or above ${chargeToDegC} °C`,
      basis: 'default',
      source: 'Kollmeyer 2018, doi 10.17632/wykht8y7tg.1; faster discharge gives less',
    },
    {
      name: 'Cells at night',
      value: sleepWords[rules.cellsSleep],
      basis: 'rider',
      source: 'scenario; warmth: common practice',
    },
  ];
}

const sleepWords: Readonly<Record<Scenario['rules']['cellsSleep'], string>> = {
  tent: `in the tent, ${tentWarmerK} K warmer than outside`,
  'sleeping-bag': `in the sleeping bag, at ${besideBodyDegC} °C`,
  outside: 'outside, as cold as the air',
};

function panelAssumption(panel: ItemOf<'panel'>, kept: readonly KeptEstimate[]): Assumption {
  const { label, ratedW, measuredRatedW, regulatorEfficiency } = panel;
  if (measuredRatedW !== null)
    return {
      name: label,
      value: `${decimal(measuredRatedW.value, 1)} W at the plug`,
      basis: 'measured',
      source: measuredSource(panel, 'panel-power', measuredRatedW.on, kept),
    };
  return {
    name: label,
    value: `${decimal(ratedW, 1)} W × ${inPercent(regulatorEfficiency)} regulator`,
    basis: 'label',
    source: 'rating at 1000 W/m²',
  };
}

function chargerAssumption({ label, totalW, outputs }: ItemOf<'wall-charger'>): Assumption {
  const ports = outputs.map(({ powerW }) => `${decimal(powerW, 1)} W`).join(' and ');
  return {
    name: label,
    value: `${decimal(totalW, 1)} W together from ports of ${ports}`,
    basis: 'label',
    source: 'rating',
  };
}

function placementAssumption({ placement }: Scenario): Assumption {
  return {
    name: 'Placement',
    value: placementWords(placement),
    basis: 'rider',
    source: `scenario; rack factor: common practice about ${inPercent(0.6)}`,
  };
}
