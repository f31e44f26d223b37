import type { JobInput, JobKind, JobOutput } from './jobs.ts';

/** Who wants to know how a run goes. */
export interface Watch<Output> {
  /** Told now and then how far the run is, 0..1. */
  readonly onProgress: (share: number) => void;
  /** Told each result as it comes, in any order. */
  readonly onResult?: (output: Output, index: number) => void;
}

/** Jobs being done. */
export interface CrewRun<Output> {
  /** In the order of the inputs; null when the run was cancelled. Rejects on a fault of ours. */
  readonly results: Promise<readonly Output[] | null>;
  /** Stops the work at once. */
  cancel(): void;
}

/** Does jobs away from the thread that answers calls, several at a time. */
export interface Crew {
  /** How many jobs are done side by side. */
  readonly size: number;
  start<K extends JobKind>(
    kind: K,
    inputs: readonly JobInput<K>[],
    watch: Watch<JobOutput<K>>,
  ): CrewRun<JobOutput<K>>;
  close(): void;
}
