import type { Comparison, ScoredRow } from '../../shared-types/comparison.ts';
import type { CallInput, CallResult } from '../../shared-types/contract.ts';
import { success, type CallError, type Outcome } from '../../shared-types/outcome.ts';
import type { Preferences } from '../../shared-types/settings.ts';
import type { Calls } from './calls.ts';
import { Delay } from './delay.ts';
import { Turns } from './turns.ts';

export type ComparisonSubject = CallInput<'comparison.run'>;

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
  readonly #calls: Calls;
  readonly #sources: ComparisonSources;
  readonly #burst = new Delay(burstMs);
  readonly #turns = new Turns();

  constructor(calls: Calls, sources: ComparisonSources) {
    this.#calls = calls;
    this.#sources = sources;
  }

  /** Runs the comparison again once the present burst of changes has passed. */
  request(): void {
    this.updating = this.#sources.subject() !== null;
    this.#burst.run(() => void this.run());
  }

  async run(): Promise<void> {
    const turn = this.#turns.take('run');
    const subject = this.#sources.subject();
    this.updating = subject !== null;
    if (subject === null) {
      this.#clear();
      return;
    }
    const outcome = await this.#calls.ask('comparison.run', subject);
    if (!turn.isNewest()) return;
    this.updating = false;
    if (outcome.ok) this.#take(outcome.value);
    else this.#refuse(outcome.error, subject.tourId);
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
    this.failure = error;
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
