import { labelWh, type DeviceUse, type Item } from '../../../shared-types/item.ts';
import type { HubPower } from '../../../shared-types/hub-item.ts';
import { percent, wattHours, withUnit } from '../../../shared-types/figures.ts';

function watts(value: number, locale?: string): string {
  return withUnit(value, 'W', { digits: 2, locale });
}

function useText(use: DeviceUse, locale?: string): string {
  if (use.as === 'day') return `${wattHours(use.whPerDay, locale)} a day`;
  return `${watts(use.ridingW, locale)} riding`;
}

function powerText(power: HubPower, locale?: string): string {
  if (power.as === 'rating') return `${watts(power.ratedW, locale)} at 15 km/h`;
  const most = Math.max(...power.points.map(({ powerW }) => powerW));
  return `measured at the ${power.readAt}, up to ${watts(most, locale)}`;
}

/** The one line of figures by which a rider tells two items of a kind apart. */
export function keyFigure(item: Item, locale?: string): string {
  switch (item.kind) {
    case 'device':
      return `${wattHours(labelWh(item.capacity), locale)}, ${useText(item.use, locale)}`;
    case 'bank':
      return item.measuredDeliverableWh === null
        ? `${wattHours(labelWh(item.capacity), locale)} on the label`
        : `${wattHours(item.measuredDeliverableWh.value, locale)} measured`;
    case 'panel':
      return item.measuredRatedW === null
        ? `${watts(item.ratedW, locale)} rated`
        : `${watts(item.measuredRatedW.value, locale)} measured`;
    case 'generator-hub':
      return powerText(item.power, locale);
    case 'converter':
      return `${percent(item.efficiency, { locale })}, from ${withUnit(item.startSpeedKmh, 'km/h', { locale })}`;
    case 'wall-charger':
      return `${watts(item.totalW, locale)}, ${item.outputs.length === 1 ? '1 port' : `${item.outputs.length} ports`}`;
    case 'accessory':
      return '';
  }
}
