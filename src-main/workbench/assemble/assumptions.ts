import type { Assumption } from '../../../shared-types/comparison.ts';
import { formatNumber, percent, wordsLocale } from '../../../shared-types/figures.ts';
import { labelWh } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { SkySettings } from '../../../shared-types/settings.ts';
import { bedtime, ridesFrom, wakesAt } from '../../model/flow/day-schedule.ts';
import { meanDemandWhPerDay } from '../../model/flow/demand.ts';
import { deviceEfficiencyIn, type DeviceModel } from '../../model/storage/device.ts';
import { uprightDragAreaM2 } from '../../model/ride/power-balance.ts';
import { taperStart } from '../../model/storage/taper.ts';
import { ofKind, type CarriedItem } from './kit.ts';
import { placementWords } from './placement-words.ts';
import { skyAssumptions } from './sky-assumptions.ts';
import type { TourModel } from './tour.ts';

/** The figures every scenario of a comparison rests on. */
export function sharedAssumptions(
  { tour, places, timeline }: TourModel,
  devices: readonly DeviceModel[],
  sky: SkySettings,
): readonly Assumption[] {
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
    {
      name: 'Rider',
      value: `${decimal(tour.riderW)} W at the pedals, ${decimal(tour.riderMassKg + tour.bicycleMassKg)} kg without kit`,
      basis: 'rider',
      source: 'tour',
    },
    {
      name: 'Air drag',
      value: `${decimal(uprightDragAreaM2, 3)} m² drag area`,
      basis: 'default',
      source: 'Tengattini & Bigazzi, 557 cyclists',
    },
    ...devices.map((device): Assumption => ({
      name: device.label,
      value: `${decimal(device.capacityWh, 1)} Wh, ${decimal(meanDemandWhPerDay([device], timeline), 1)} Wh a day, ${device.mustHave ? 'must-have' : 'nice-to-have'}`,
      basis: 'label',
      source: 'catalogue',
    })),
    { name: 'Step', value: `${decimal(timeline.stepHours * 60)} min`, basis: 'rider', source: 'settings' },
  ];
}

/** The figures of one scenario's own kit, saying for each whether it is a label's or the rider's own measurement. */
export function kitAssumptions(scenario: Scenario, lines: readonly CarriedItem[]): readonly Assumption[] {
  return [
    ...ofKind(lines, 'bank').map(({ item }): Assumption => {
      const measured = item.measuredDeliverableWh;
      return measured === null
        ? {
            name: item.label,
            value: `${decimal(labelWh(item.capacity) * item.health, 1)} Wh in the cells, ${inPercent(item.efficiencyIn)} in, ${inPercent(item.efficiencyOut)} out`,
            basis: 'label',
            source: `label × health ${inPercent(item.health)}`,
          }
        : {
            name: item.label,
            value: `${decimal(measured.value, 1)} Wh at the plug, full to empty`,
            basis: 'measured',
            source: `measured on ${measured.on}`,
          };
    }),
    ...ofKind(lines, 'panel').flatMap(({ item }): Assumption[] => [
      item.measuredRatedW === null
        ? {
            name: item.label,
            value: `${decimal(item.ratedW, 1)} W × ${inPercent(item.regulatorEfficiency)} regulator`,
            basis: 'label',
            source: 'rating at 1000 W/m²',
          }
        : {
            name: item.label,
            value: `${decimal(item.measuredRatedW.value, 1)} W at the plug`,
            basis: 'measured',
            source: `measured on ${item.measuredRatedW.on}`,
          },
      {
        name: 'Placement',
        value: placementWords(scenario.placement),
        basis: 'rider',
        source: `scenario; rack factor: common practice about ${inPercent(0.6)}`,
      },
    ]),
    ...ofKind(lines, 'generator-hub').map(({ item }): Assumption =>
      item.power.as === 'rating'
        ? {
            name: item.label,
            value: `${decimal(item.power.ratedW, 1)} W rating, reference generator`,
            basis: 'label',
            source: 'approval limits into 12 Ω; JIS C 9502 ratios',
          }
        : {
            name: item.label,
            value: `power curve of ${item.power.points.length} points`,
            basis: 'measured',
            source: 'rider’s own curve',
          },
    ),
  ];
}

function decimal(value: number, digits = 0): string {
  return formatNumber(value, { digits, locale: wordsLocale });
}

function inPercent(share: number): string {
  return percent(share, { locale: wordsLocale });
}
