import type { Comparison } from '../../shared-types/comparison.ts';
import type { CallError } from '../../shared-types/outcome.ts';
import type { Preferences } from '../../shared-types/settings.ts';
import type { Swings } from '../../shared-types/swings.ts';
import type { Calls } from './calls.ts';
import type { ComparisonSubject } from './comparison.svelte.ts';
import { LongRun } from './long-run.svelte.ts';
import type { RunProgress } from './run-progress.svelte.ts';
import { Turns } from './turns.ts';

export interface SwingsSources {
  /** The comparison whose answer is in question; null while there is none. */
  readonly comparison: () => Comparison | null;
  /** What it compares. */
  readonly subject: () => ComparisonSubject | null;
  /** Weights and limits as the rider has them now, stored or not. */
  readonly preferences: () => Preferences | null;
}

interface Found {
  readonly swings: Swings;
  /** What stood on the board when it was asked for: every change of figures, weights or limits puts another there. */
  readonly of: Comparison;
}

/** What would change the answer on the board: asked for by the rider, since it takes a while. */
export class SwingsState {
  failure = $state.raw<CallError | null>(null);
  /** The last run was stopped. */
  cancelled = $state(false);
  #found = $state.raw<Found | null>(null);
  readonly #calls: Calls;
  readonly #sources: SwingsSources;
  readonly #turns = new Turns();
  readonly #run: LongRun;

  constructor(calls: Calls, sources: SwingsSources) {
    this.#calls = calls;
    this.#sources = sources;
    this.#run = new LongRun(calls);
  }

  get running(): boolean {
    return this.#run.running;
  }

  get progress(): RunProgress {
    return this.#run.progress;
  }

  /** The last result, of the tour that is compared now; another tour's would be read as this one's. */
  get shown(): Swings | null {
    const swings = this.#found?.swings ?? null;
    return swings?.tourId === this.#sources.comparison()?.tour.id ? swings : null;
  }

  /** What is shown is older than what stands on the board. */
  get stale(): boolean {
    return this.shown !== null && this.#found?.of !== this.#sources.comparison();
  }

  async run(): Promise<void> {
    const of = this.#sources.comparison();
    const subject = this.#sources.subject();
    const preferences = this.#sources.preferences();
    if (of === null || subject === null || preferences === null) return;
    const turn = this.#turns.take();
    this.failure = null;
    this.cancelled = false;
    const runId = this.#run.begin();
    const outcome = await this.#calls.attempt('outlook.swings', { ...subject, runId, preferences });
    if (!turn.isNewest()) return;
    this.#run.end();
    if (outcome.ok) this.#found = { swings: outcome.value, of };
    else if (outcome.error.code === 'cancelled') this.cancelled = true;
    else this.failure = outcome.error;
  }

  /** Stops the run at the rider's wish; whatever it still answers is too late. */
  cancel(): void {
    this.#turns.take();
    this.#run.stop();
    this.cancelled = true;
  }
}
