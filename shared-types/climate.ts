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
