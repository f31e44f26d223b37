import type { DayLedger } from '../../shared-types/comparison.ts';
import type { Flow } from '../../shared-types/flows.ts';

/** Mean Wh a day over the tour at the plug; 0 for a tour without days. */
export function dailyMeanWh(days: readonly DayLedger[], flow: Flow): number {
  if (days.length === 0) return 0;
  return days.reduce((sum, day) => sum + day[flow], 0) / days.length;
}
