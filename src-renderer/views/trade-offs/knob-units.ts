import type { Criterion } from '../../../shared-types/settings.ts';
import { criterionLabel } from '../../parts/text/criterion-label.ts';
import { display } from '../../state/display.svelte.ts';

/** The unit in which the bounds of a knob are kept, shares as they are shown; null for money, which is in the rider's currency. */
const units: Readonly<Record<Criterion, string | null>> = {
  cost: null,
  grams: 'g',
  frontWheelGrams: 'g',
  margin: '%',
  risk: '%',
  minutesLost: 'min',
  daysWithoutWall: 'days',
};

export function knobUnit(criterion: Criterion, currency: string): string {
  return units[criterion] ?? currency;
}

/** A criterion with its unit, unless its label says what is counted. */
export function nameWithUnit(criterion: Criterion, currency: string): string {
  const label = criterionLabel(criterion);
  const saysUnit = criterion === 'minutesLost' || criterion === 'daysWithoutWall';
  if (saysUnit) return label;
  const unit = knobUnit(criterion, currency);
  return `${label}, ${unit === 'g' ? display.unit(unit) : unit}`;
}

const percentPerShare = 100;

/** Shown per stored: shares are shown in per cent. */
export function knobFactor(criterion: Criterion): number {
  return units[criterion] === '%' ? percentPerShare : 1;
}
