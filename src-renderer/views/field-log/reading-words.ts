import { formatNumber, percent, withUnit } from '../../../shared-types/figures.ts';
import type { Item } from '../../../shared-types/item.ts';
import { during, meterWh, type MeterEnergy, type Reading } from '../../../shared-types/reading.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import type { StoreState } from '../../../shared-types/stop-plan.ts';
import { display } from '../../state/display.svelte.ts';

/** A reading as a rider would say it. */
export function readingWords(reading: Reading, item: Item | undefined, locale?: string): string {
  const full = (state: StoreState): string => fullnessWords(state, item, locale);
  switch (reading.as) {
    case 'charge':
      return full(reading.state);
    case 'delivery':
      return `gave ${energyWords(reading.energy, locale)} from ${full(reading.before)} to ${full(reading.after)}`;
    case 'intake':
      return `took in ${energyWords(reading.energy, locale)} from ${full(reading.before)} to ${full(reading.after)}`;
    case 'use':
      return `${percent(reading.beforeShare, { locale })} to ${percent(reading.afterShare, { locale })} in ${hoursText(reading.hours, locale)}, ${duringWords(reading.during)}`;
    case 'sun':
      return `gave ${energyWords(reading.energy, locale)} in ${hoursText(reading.hours, locale)} of full sun`;
    case 'ride':
      return `gave ${energyWords(reading.energy, locale)} in ${hoursText(reading.hours, locale)} of riding${distanceText(reading.distanceKm, locale)}`;
  }
}

function fullnessWords(state: StoreState, item: Item | undefined, locale?: string): string {
  if (state.as === 'share') return percent(state.share, { locale });
  const of = item?.kind === 'bank' ? ` of ${formatNumber(item.lights, { locale })}` : '';
  return `${formatNumber(state.lit, { locale })}${of} lights`;
}

function energyWords(energy: MeterEnergy, locale?: string): string {
  const wh = withUnit(meterWh(energy), 'Wh', { digits: 1, locale });
  if (energy.as === 'meter-wh') return wh;
  const charge = withUnit(energy.mAh, 'mAh', { locale });
  return `${charge} at ${withUnit(energy.volts, 'V', { digits: 1, locale })} (${wh})`;
}

function distanceText(distanceKm: number | null, locale?: string): string {
  return distanceKm === null ? '' : `, ${display.distance(distanceKm, { digits: 1, locale })}`;
}

function hoursText(hours: number, locale?: string): string {
  return withUnit(hours, 'h', { digits: 2, locale });
}

function duringWords(part: (typeof during.options)[number]): string {
  return (fieldMeta(during)?.choices?.[part] ?? part).toLowerCase();
}
