import type { Assumption } from '../../../shared-types/comparison.ts';
import { percent, wordsLocale } from '../../../shared-types/figures.ts';
import { persistenceRange, usualSky, type SkySettings } from '../../../shared-types/settings.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { decimal } from './words.ts';
import { cleanestTurbidity } from '../../model/sun/clear-sky.ts';
import { angstromOvercast, angstromPerSunshine } from '../../model/sun/monthly-clearness.ts';

/** The figures that the light of a tour rests on. */
export function skyAssumptions(tour: Tour, stations: string, sky: SkySettings): readonly Assumption[] {
  return [
    ...monthlyAssumptions(tour, stations),
    weather(sky),
    {
      name: 'Outlets at day stops',
      value: 'there or not by their chance, drawn for each history',
      basis: 'default',
      source: 'tour',
    },
    {
      name: 'Light on a panel',
      value: `${sky.diffuse === 'hay-davies' ? 'Hay-Davies' : 'isotropic'} sky, ground ${percent(sky.groundReflectance, { locale: wordsLocale })}, held at a cloudless sky (turbidity ${decimal(cleanestTurbidity, 1)})`,
      basis: basisOf(sky, 'diffuse', 'groundReflectance'),
      source: `${sky.diffuse === 'hay-davies' ? 'Hay & Davies 1980' : 'Liu & Jordan 1963'}, Ineichen & Perez 2002; ground: common practice`,
    },
  ];
}

function monthlyAssumptions(tour: Tour, stations: string): readonly Assumption[] {
  const sunny = tour.legs.filter(({ radiation }) => radiation.as === 'sunshine');
  const own = tour.legs.filter(({ radiation }) => radiation.as === 'own');
  const bySunshine: Assumption = {
    name: 'Mean radiation',
    value: `clearness ${angstromOvercast} + ${angstromPerSunshine} × sunshine share; ${stations}`,
    basis: 'default',
    source: 'FAO-56 eq. 35',
  };
  const byRider: Assumption = {
    name: 'Mean radiation',
    value: `own monthly figures; ${own.map(({ label }) => label).join(', ')}`,
    basis: 'rider',
    source: 'tour',
  };
  return [...(sunny.length > 0 ? [bySunshine] : []), ...(own.length > 0 ? [byRider] : [])];
}

function weather(sky: SkySettings): Assumption {
  const drawn = `${decimal(sky.histories)} drawn histories, seed ${sky.seed}`;
  if (sky.method === 'transitions')
    return {
      name: 'Weather',
      value: `${drawn}; table of day-to-day changes by mean clearness`,
      basis: 'rider',
      source: 'Aguiar, Collares-Pereira & Conde 1988',
    };
  const { low, high } = persistenceRange;
  return {
    name: 'Weather',
    value: `${drawn}; persistence ${decimal(sky.persistence, 2)} (seen: ${decimal(low, 2)} to ${decimal(high, 2)})`,
    basis: basisOf(sky, 'persistence', 'histories', 'seed'),
    source: 'Bendt et al. 1981, Hollands & Huget 1983',
  };
}

function basisOf(sky: SkySettings, ...keys: readonly (keyof SkySettings)[]): Assumption['basis'] {
  return keys.every((key) => sky[key] === usualSky[key]) ? 'default' : 'rider';
}
