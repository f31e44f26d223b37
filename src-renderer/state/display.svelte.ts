import type { NumberFormat, Units } from '../../shared-types/display-settings.ts';
import { followLocale, formatNumber, withUnit, type NumberStyle } from '../../shared-types/figures.ts';
import { converted } from '../../shared-types/quantity/units.ts';

/** What stands for a stored unit where the rider reads imperial ones, with the decimals that tell as much. */
const imperial = {
  g: { unit: 'oz', digits: 1 },
  kg: { unit: 'lb', digits: 1 },
  km: { unit: 'mi', digits: 1 },
  m: { unit: 'ft', digits: 0 },
  'km/h': { unit: 'mph', digits: 0 },
  '°C': { unit: '°F', digits: 0 },
} as const;

/** Units of figures that are shown in the rider's system; `m` is a height. */
export type ShownUnit = keyof typeof imperial;

export function hasOwnSystem(unit: string): unit is ShownUnit {
  return Object.hasOwn(imperial, unit);
}

/** The unit that a figure kept in `unit` is shown in. */
export interface RidersUnits {
  unit(unit: ShownUnit): string;
}

/**
 * The units and the number format that the rider reads. One window has one rider, so that there is one of it: every figure that
 * is made within a component follows it.
 */
class Display implements RidersUnits {
  #units = $state.raw<Units>('metric');
  #format = $state.raw<NumberFormat>('system');

  choose({ units, numberFormat }: { readonly units: Units; readonly numberFormat: NumberFormat }): void {
    this.#units = units;
    this.#format = numberFormat;
  }

  get isImperial(): boolean {
    return this.#units === 'imperial';
  }

  /** undefined for the system's own. */
  get locale(): string | undefined {
    return this.#format === 'system' ? undefined : this.#format;
  }

  /** For heads of columns and axes. */
  unit(unit: ShownUnit): string {
    return this.isImperial ? imperial[unit].unit : unit;
  }

  /** A figure kept in `unit` as one in the unit shown. */
  value(value: number, unit: ShownUnit): number {
    return converted(value, unit, this.unit(unit));
  }

  /** The figure alone, where a head names its unit, with as many decimals as those under it. */
  figure(value: number, unit: ShownUnit, style: NumberStyle = {}): string {
    const fixed = style.fixed ?? this.isImperial;
    return formatNumber(this.value(value, unit), this.#styled(unit, { ...style, fixed }));
  }

  /** Figure and unit. */
  text(value: number, unit: ShownUnit, style: NumberStyle = {}): string {
    return withUnit(this.value(value, unit), this.unit(unit), this.#styled(unit, style));
  }

  mass(g: number, style?: NumberStyle): string {
    return this.text(g, 'g', style);
  }

  distance(km: number, style?: NumberStyle): string {
    return this.text(km, 'km', style);
  }

  height(m: number, style?: NumberStyle): string {
    return this.text(m, 'm', style);
  }

  speed(kmh: number, style?: NumberStyle): string {
    return this.text(kmh, 'km/h', style);
  }

  temperature(degC: number, style?: NumberStyle): string {
    return this.text(degC, '°C', style);
  }

  #styled(unit: ShownUnit, style: NumberStyle): NumberStyle {
    return this.isImperial ? { ...style, digits: Math.max(style.digits ?? 0, imperial[unit].digits) } : style;
  }
}

export const display = new Display();

followLocale(() => display.locale);
