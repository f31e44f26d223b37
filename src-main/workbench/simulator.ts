import type { ScenarioResult } from '../../shared-types/comparison.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { ComparisonGround } from './scenario-job.ts';

/** Scenarios being simulated. */
export interface SimulatedRun {
  /** In the order of the scenarios; null when the run was cancelled. Rejects on a fault of ours. */
  readonly results: Promise<readonly ScenarioResult[] | null>;
  /** Stops the work at once. */
  cancel(): void;
}

/** Simulates the scenarios of comparisons away from the thread that answers calls. */
export interface Simulator {
  /** @param onProgress told now and then how far the run is, 0..1 */
  start(
    ground: ComparisonGround,
    scenarios: readonly Scenario[],
    onProgress: (share: number) => void,
  ): SimulatedRun;
  close(): void;
}
