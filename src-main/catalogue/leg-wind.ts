import type { Wind } from '../../shared-types/tour.ts';

/** The wind in the row of its leg; its speed is the headwind or the wind from all sides: the constraint `wind_in_one_form`. */
export type WindColumns =
  | { readonly wind: 'calm'; readonly wind_kmh: null }
  | { readonly wind: 'along' | 'around'; readonly wind_kmh: number };

export function windColumns(wind: Wind): WindColumns {
  switch (wind.as) {
    case 'calm':
      return { wind: 'calm', wind_kmh: null };
    case 'along':
      return { wind: 'along', wind_kmh: wind.headwindKmh };
    case 'around':
      return { wind: 'around', wind_kmh: wind.windKmh };
  }
}

export function windOf(row: WindColumns): Wind {
  switch (row.wind) {
    case 'calm':
      return { as: 'calm' };
    case 'along':
      return { as: 'along', headwindKmh: row.wind_kmh };
    case 'around':
      return { as: 'around', windKmh: row.wind_kmh };
  }
}
