import type { Criterion } from '../../../shared-types/settings.ts';
import type { Span } from './assumption-range.ts';

/** All that the walks through the histories tell. */
export const energyCriteria: readonly Criterion[] = ['margin', 'risk', 'daysWithoutWall'];

export const nothingMoved: readonly Criterion[] = [];

export const fromPractice = 'common practice, no source';

/** Factors on the plan, from less to more. */
export function factors(low: number, high: number): Span {
  return { low, high, base: 1, start: 1, whole: false };
}

/** Values with that of the plan among them; a plan beyond an end takes the end with it. */
export function around(low: number, high: number, base: number): Span {
  return { low: Math.min(low, base), high: Math.max(high, base), base, start: base, whole: false };
}
