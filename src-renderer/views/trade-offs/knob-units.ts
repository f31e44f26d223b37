import { criteria, type Criterion } from '../../../shared-types/settings.ts';

/** The unit in which a knob shows its bounds; null for money, which is in the rider's currency. */
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
  const { label } = criteria[criterion];
  const saysUnit = criterion === 'minutesLost' || criterion === 'daysWithoutWall';
  return saysUnit ? label : `${label}, ${knobUnit(criterion, currency)}`;
}

const percentPerShare = 100;

/** Shown per stored: shares are shown in per cent. */
export function knobFactor(criterion: Criterion): number {
  return units[criterion] === '%' ? percentPerShare : 1;
}
