import type { Comparison, ScoredRow } from '../../shared-types/comparison.ts';
import type { CallInput, CallResult } from '../../shared-types/contract.ts';
import { success, type CallError, type Outcome } from '../../shared-types/outcome.ts';
import type { Preferences } from '../../shared-types/settings.ts';
import type { Calls } from './calls.ts';
import { Delay } from './delay.ts';
import { LongRun } from './long-run.svelte.ts';
import type { RunProgress } from './run-progress.svelte.ts';
import { Turns } from './turns.ts';

/** What a run compares; the run itself is named by the state. */
export type ComparisonSubject = Omit<CallInput<'comparison.run'>, 'runId'>;

/** Saves that follow each other closely cost one run. */
const burstMs = 120;

export interface ComparisonSources {
  /** What to compare now; null when there is no tour or no scenario. */
  readonly subject: () => ComparisonSubject | null;
  /** Weights and limits that a run started now would not know of yet; null when all are stored. */
  readonly unstoredPreferences: () => Preferences | null;
}

/** The comparison of the current tour; an old result stays readable while a new one is made. */
export class ComparisonState {
  current = $state.raw<Comparison | null>(null);
  failure = $state.raw<CallError | null>(null);
  updating = $state(false);
  /** The last run was stopped, so that what is shown is older than what is stored. */
  cancelled = $state(false);
  readonly #calls: Calls;
  readonly #sources: ComparisonSources;
  readonly #burst = new Delay(burstMs);
  readonly #turns = new Turns();
  readonly #run: LongRun;

  constructor(calls: Calls, sources: ComparisonSources) {
    this.#calls = calls;
    this.#sources = sources;
    this.#run = new LongRun(calls);
  }

  get progress(): RunProgress {
    return this.#run.progress;
  }

  /** Runs the comparison again once the present burst of changes has passed. */
  request(): void {
    this.updating = this.#sources.subject() !== null;
    this.#burst.run(() => void this.run());
  }

  /** @param atOnce the rider asked for it, so that its progress is shown from the start */
  async run(atOnce = false): Promise<void> {
    const turn = this.#turns.take('run');
    const subject = this.#sources.subject();
    this.updating = subject !== null;
    this.cancelled = false;
    if (subject === null) {
      this.#run.stop();
      this.#clear();
      return;
    }
    const outcome = await this.#calls.attempt('comparison.run', {
      ...subject,
      runId: this.#run.begin(atOnce),
    });
    if (!turn.isNewest()) return;
    this.#run.end();
    this.updating = false;
    if (outcome.ok) this.#take(outcome.value);
    else this.#refuse(outcome.error, subject.tourId);
  }

  /** Stops the run under way at the rider's wish; whatever it still answers is too late. */
  cancel(): void {
    const tourId = this.#sources.subject()?.tourId;
    this.#turns.take('run');
    this.#run.stop();
    this.updating = false;
    this.#noteCancelled(tourId);
  }

  /** Ranks the result shown anew; without a result there is nothing to rank, and that is no failure. */
  async rank(preferences: Preferences): Promise<Outcome<unknown>> {
    const tourId = this.current?.tour.id;
    if (tourId === undefined) return success(null);
    const turn = this.#turns.take('rank');
    const outcome = await this.#calls.submit('comparison.rank', { tourId, preferences });
    if (outcome.ok && turn.settle() && this.current?.tour.id === tourId) {
      this.current = ranked(this.current, outcome.value);
    }
    return outcome;
  }

  #take(comparison: Comparison): void {
    this.current = comparison;
    this.failure = null;
    const preferences = this.#sources.unstoredPreferences();
    if (preferences !== null) void this.rank(preferences);
  }

  #refuse(error: CallError, tourId: string): void {
    if (error.code === 'cancelled') {
      this.#noteCancelled(tourId);
      return;
    }
    this.#calls.notices.fail(error.message);
    this.failure = error;
    this.#keepOnly(tourId);
  }

  #noteCancelled(tourId: string | undefined): void {
    this.cancelled = true;
    this.#keepOnly(tourId);
  }

  /** A result of another tour would be read as that of the tour now chosen. */
  #keepOnly(tourId: string | undefined): void {
    if (this.current?.tour.id !== tourId) this.current = null;
  }

  #clear(): void {
    this.current = null;
    this.failure = null;
  }
}

function ranked(comparison: Comparison, change: CallResult<'comparison.rank'>): Comparison {
  const rankOf = (id: string): number => rankIn(change.scores, id);
  const scenarios = comparison.scenarios.toSorted((one, other) => rankOf(one.id) - rankOf(other.id));
  return { ...comparison, ...change, scenarios };
}

function rankIn(scores: readonly ScoredRow[], id: string): number {
  return scores.find((row) => row.id === id)?.rank ?? scores.length + 1;
}
