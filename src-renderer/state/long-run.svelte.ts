import type { Calls } from './calls.ts';
import { RunProgress } from './run-progress.svelte.ts';

/** A run that takes the workbench a while, under a name of its own: begun, followed, and stopped when nobody waits for it. */
export class LongRun {
  running = $state(false);
  readonly progress: RunProgress;
  readonly #calls: Calls;
  #runId: string | null = null;

  constructor(calls: Calls) {
    this.#calls = calls;
    this.progress = new RunProgress(calls);
  }

  /**
   * Begins a run in place of the one under way, so that the two need not share the computer.
   *
   * @param atOnce the rider asked for it, so that its progress is shown from the start
   * @returns the name to ask for it by
   */
  begin(atOnce = true): string {
    this.cancel();
    this.#runId = crypto.randomUUID();
    this.running = true;
    this.progress.follow(this.#runId, atOnce);
    return this.#runId;
  }

  isUnderWay(runId: string): boolean {
    return this.#runId === runId;
  }

  /** Has the workbench stop it; whatever it has to say by then, it still answers. */
  cancel(): void {
    if (this.#runId !== null) void this.#calls.attempt('runs.cancel', { runId: this.#runId });
  }

  /** It has answered, or nobody waits for its answer any more. */
  end(): void {
    this.#runId = null;
    this.running = false;
    this.progress.stop();
  }

  stop(): void {
    this.cancel();
    this.end();
  }
}
