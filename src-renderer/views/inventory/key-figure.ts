import { labelWh, type DeviceUse, type ItemDraft } from '../../../shared-types/item.ts';
import type { HubPower } from '../../../shared-types/hub-item.ts';
import { percent, wattHours, withUnit } from '../../../shared-types/figures.ts';
import { display } from '../../state/display.svelte.ts';

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

const hardSpace = '\u00a0';

/** `74 Wh label, 61 Wh measured`, each half kept on one line. */
function besideMeasured(
  promised: number,
  by: string,
  measured: { readonly value: number } | null,
  text: (value: number) => string,
): string {
  const first = `${text(promised)}${hardSpace}${by}`;
  return measured === null ? first : `${first}, ${text(measured.value)}${hardSpace}measured`;
}

/** The one line of figures by which a rider tells two items of a kind apart. */
export function keyFigure(item: ItemDraft, locale?: string): string {
  switch (item.kind) {
    case 'device':
      return `${wattHours(labelWh(item.capacity), locale)}, ${useText(item.use, locale)}`;
    case 'bank':
      return besideMeasured(labelWh(item.capacity), 'label', item.measuredDeliverableWh, (wh) =>
        wattHours(wh, locale),
      );
    case 'panel':
      return besideMeasured(item.ratedW, 'rated', item.measuredRatedW, (w) => watts(w, locale));
    case 'generator-hub':
      return powerText(item.power, locale);
    case 'converter':
      return `${percent(item.efficiency, { locale })}, from ${display.speed(item.startSpeedKmh, { locale })}`;
    case 'wall-charger':
      return `${watts(item.totalW, locale)}, ${item.outputs.length === 1 ? '1 port' : `${item.outputs.length} ports`}`;
    case 'accessory':
      return '';
  }
}
