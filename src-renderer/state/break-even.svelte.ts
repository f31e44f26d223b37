import type { BreakEvenMap } from '../../shared-types/break-even.ts';
import type { CallError } from '../../shared-types/outcome.ts';
import type { Preferences } from '../../shared-types/settings.ts';
import type { Calls } from './calls.ts';
import type { ComparisonSources } from './comparison.svelte.ts';
import { LongRun } from './long-run.svelte.ts';
import type { RunProgress } from './run-progress.svelte.ts';
import { Turns } from './turns.ts';

/** The break-even map of one leg: drawn when the rider asks for it, ranked anew with every change of weights or limits. */
export class BreakEvenState {
  failure = $state.raw<CallError | null>(null);
  /** Something that its figures rest on was stored since it was drawn. */
  outdated = $state(false);
  readonly #calls: Calls;
  readonly #sources: ComparisonSources;
  readonly #turns = new Turns();
  readonly #run: LongRun;
  #drawn = $state.raw<BreakEvenMap | null>(null);
  #changes = 0;

  constructor(calls: Calls, sources: ComparisonSources) {
    this.#calls = calls;
    this.#sources = sources;
    this.#run = new LongRun(calls);
  }

  get drawing(): boolean {
    return this.#run.running;
  }

  get progress(): RunProgress {
    return this.#run.progress;
  }

  /** The last map that was drawn, if it is of the tour now chosen; it stays readable while a new one is made. */
  get map(): BreakEvenMap | null {
    return this.#drawn?.tourId === this.#sources.subject()?.tourId ? this.#drawn : null;
  }

  /** @param leg counts from 0 */
  async draw(leg: number): Promise<void> {
    const subject = this.#sources.subject();
    if (subject === null) return;
    const turn = this.#turns.take('draw');
    this.failure = null;
    const [runId, changes] = [this.#run.begin(), this.#changes];
    const outcome = await this.#calls.attempt('outlook.map', { ...subject, leg, runId });
    if (!turn.isNewest()) return;
    this.#run.end();
    if (outcome.ok) this.#take(outcome.value, changes);
    else if (outcome.error.code !== 'cancelled') this.failure = outcome.error;
  }

  /** Stops the map under way; the one before it stays. */
  stop(): void {
    this.#turns.take('draw');
    this.#run.stop();
  }

  /** Ranks the map shown anew; without one there is nothing to rank. */
  async rank(preferences: Preferences): Promise<void> {
    const before = this.#drawn;
    if (before === null) return;
    const turn = this.#turns.take('rank');
    const { tourId, leg } = before;
    const outcome = await this.#calls.attempt('outlook.rankMap', { tourId, leg, preferences });
    const isShown = this.#drawn?.tourId === tourId && this.#drawn.leg === leg;
    if (!isShown || !turn.settle()) return;
    if (outcome.ok) this.#drawn = outcome.value;
    else this.outdated = true;
  }

  /** What is stored has changed, so that the map shown is of what was before. */
  outdate(): void {
    this.#changes += 1;
    this.outdated = true;
  }

  /** @param changes that were stored before it was asked for */
  #take(map: BreakEvenMap, changes: number): void {
    this.#drawn = map;
    this.outdated = changes !== this.#changes;
    const preferences = this.#sources.unstoredPreferences();
    if (preferences !== null) void this.rank(preferences);
  }
}
