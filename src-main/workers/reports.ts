import type { ScenarioResult } from '../../shared-types/comparison.ts';

/** What a worker says about the job it was sent. */
export type WorkerReport =
  | { readonly as: 'walked'; readonly walks: number }
  | { readonly as: 'done'; readonly result: ScenarioResult };
