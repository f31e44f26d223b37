import type { EnergyMargin } from '../../../shared-types/comparison.ts';
import { percent } from './format.ts';

/** The figure of a margin: `+31 %`; with no limit found, the largest that was tried. */
export function marginFigure({ value, capped }: EnergyMargin, locale?: string): string {
  return `${capped ? 'over ' : ''}${percent(value, { signed: true, locale })}`;
}
