import type { DayLedger } from './comparison.ts';

/** Where energy comes from and goes to, as columns of a table and the word for each at its head. */
export const flowHeads = {
  demand: 'Use',
  wall: 'Wall',
  panel: 'Panel',
  hub: 'Hub',
  lost: 'Lost',
  spilled: 'Spilled',
  unserved: 'Unserved',
} as const satisfies Partial<Record<keyof DayLedger, string>>;
export type Flow = keyof typeof flowHeads;
export const flows = Object.keys(flowHeads) as Flow[];
