import type { AssumptionRange } from './assumption-range.ts';
import { energyRanges } from './energy-ranges.ts';
import { panelRanges } from './panel-ranges.ts';
import { planRanges } from './plan-ranges.ts';

/** Every assumption whose swing is looked at, each moved alone. */
export const assumptionRanges: readonly AssumptionRange[] = [...panelRanges, ...energyRanges, ...planRanges];
