import type { Criterion } from '../../../shared-types/settings.ts';

/** The unit in which a knob shows its limits; a margin is stored as a share and shown in per cent. */
export function knobUnit(criterion: Criterion, currency: string): string {
  if (criterion === 'cost') return currency;
  return criterion === 'margin' ? '%' : 'g';
}

export function knobFactor(criterion: Criterion): number {
  return criterion === 'margin' ? 100 : 1;
}
