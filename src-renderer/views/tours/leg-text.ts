import { fieldMeta } from '../../../shared-types/field.ts';
import { terrainClass, type Leg, type Place } from '../../../shared-types/tour.ts';
import { formatNumber } from '../../../shared-types/figures.ts';
import { display } from '../../state/display.svelte.ts';

export function placeText(place: Place, locale?: string): string {
  if (place.as === 'station') return place.station;
  return `${degrees(place.latDeg, 'N', 'S', locale)}, ${degrees(place.lonDeg, 'E', 'W', locale)}`;
}

function degrees(value: number, positive: string, negative: string, locale?: string): string {
  const figure = formatNumber(Math.abs(value), { digits: 2, locale });
  return `${figure}° ${value < 0 ? negative : positive}`;
}

export function terrainText({ terrain }: Pick<Leg, 'terrain'>, locale?: string): string {
  if (terrain.as === 'track') {
    const { distanceKm, ascentM } = terrain.track;
    return `Track, ${display.distance(distanceKm, { locale })}, ${display.height(ascentM, { locale })} up`;
  }
  return fieldMeta(terrainClass)?.choices?.[terrain.terrainClass] ?? terrain.terrainClass;
}
