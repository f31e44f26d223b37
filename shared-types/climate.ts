/** A climate station: monthly means, index 0 is January. */
export interface Station {
  readonly place: string;
  readonly country: string;
  readonly latDeg: number;
  /** East positive. */
  readonly lonDeg: number;
  readonly elevationM: number;
  /** Mean bright sunshine, hours a day. */
  readonly sunshineH: readonly number[];
  /** Mean daily minimum and maximum air temperature, °C; null where none was found. */
  readonly minDegC: readonly (number | null)[];
  readonly maxDegC: readonly (number | null)[];
  readonly source: string;
}

/** A code of a station's `source` and what it stands for. */
export interface ClimateSource {
  readonly code: string;
  readonly what: string;
}

/** Beyond these a leg's station says little of the leg, and a warning stands beside the figures (common practice, no source). */
export const farStationKm = 300;
export const otherHeightM = 500;
