import { rangeText, type FieldMeta } from '../../../shared-types/field.ts';
import { shownValue } from '../../../shared-types/quantity/format.ts';
import type { FieldUnit } from '../../../shared-types/quantity/parse.ts';
import { quantityOf, type Quantity } from '../../../shared-types/quantity/units.ts';
import { hasOwnSystem, type RidersUnits } from '../../state/display.svelte.ts';

/** A field in the units of the rider. */
export interface ShownField {
  readonly meta: FieldMeta;
  readonly unit: FieldUnit;
}

/** Label, range and step of a field, and how its text is read. */
export function shownField(meta: FieldMeta, units: RidersUnits): ShownField {
  const stored = meta.unit?.split(' ')[0];
  const shown = shownUnit(stored, meta, units);
  const unit = { stored, shown };
  if (shown === undefined || shown === stored) return { meta, unit };
  return { unit, meta: { ...meta, ...shownRange(meta, unit), unit: shown } };
}

function shownUnit(stored: string | undefined, meta: FieldMeta, units: RidersUnits): string | undefined {
  if (stored === undefined || !hasOwnSystem(stored)) return stored;
  return stored === 'm' && meta.isHeight !== true ? stored : units.unit(stored);
}

function shownRange({ min, max }: FieldMeta, unit: FieldUnit): Pick<FieldMeta, 'min' | 'max'> {
  return {
    ...(min !== undefined && { min: shownValue(min, unit) }),
    ...(max !== undefined && { max: shownValue(max, unit) }),
  };
}

const examples: Readonly<Record<Quantity, string>> = {
  mass: '540 g, 0.54 kg or 1 lb 3 oz',
  length: '900 m, 20 km, 12 mi or 3000 ft',
  speed: '18 km/h or 12 mph',
  temperature: '10 °C or 50 °F',
  power: '18 W or 0.018 kW',
  energy: '74 Wh or 0.074 kWh',
  charge: '20 Ah or 20000 mAh',
  voltage: '3.7 V',
  time: '90 min or 1 h 30 min',
};

/** What is allowed instead of a text that is not understood. */
export function notUnderstood(text: string, { meta, unit }: ShownField, locale?: string): string {
  const quantity = quantityOf(unit.stored);
  const range =
    meta.min === undefined || meta.max === undefined ? 'a number' : rangeText(meta, false, locale);
  const example = quantity === null ? '' : `, for example ${examples[quantity]}`;
  return `${range}${example}; “${text.trim()}” is not understood`;
}
