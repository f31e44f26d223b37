import type { DayLedger } from '../../shared-types/comparison.ts';

/** The columns of a day's ledger, and the word for each at the head of a table. */
export const flowHeads = {
  demand: 'Use',
  wall: 'Wall',
  panel: 'Panel',
  hub: 'Hub',
  lost: 'Lost',
  spilled: 'Spilled',
  unserved: 'Unserved',
} as const;
export type Flow = keyof typeof flowHeads;
export const flows = Object.keys(flowHeads) as Flow[];

/** Mean Wh a day over the tour at the plug; 0 for a tour without days. */
export function dailyMeanWh(days: readonly DayLedger[], flow: Flow): number {
  if (days.length === 0) return 0;
  return days.reduce((sum, day) => sum + day[flow], 0) / days.length;
}
