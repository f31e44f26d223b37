import type { KitChoice, KitSearchRequest, KitSearchResult } from '../../shared-types/kit-search.ts';
import { noLimits, type Limits } from '../../shared-types/limits.ts';
import type { CallError } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Calls } from './calls.ts';
import { LongRun } from './long-run.svelte.ts';
import type { RunProgress } from './run-progress.svelte.ts';

const askEveryMs = 500;

/** The kit search: what the rider chose for it, and what it found; the last result stays readable while a new one is made. */
export class KitSearchState {
  /** By item, where the rider chose other than usual. */
  choices = $state.raw<Readonly<Record<string, KitChoice>>>({});
  limits = $state.raw<Limits>(noLimits);
  /** The scenario whose placement and rules hold for every kit; null for the first. */
  scenarioId = $state.raw<string | null>(null);
  result = $state.raw<KitSearchResult | null>(null);
  /** The scenario that the result was searched with, as it was then. */
  like = $state.raw<Scenario | null>(null);
  failure = $state.raw<CallError | null>(null);
  #outdated = $state(false);
  readonly #calls: Calls;
  readonly #run: LongRun;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(calls: Calls) {
    this.#calls = calls;
    this.#run = new LongRun(calls);
  }

  get running(): boolean {
    return this.#run.running;
  }

  get progress(): RunProgress {
    return this.#run.progress;
  }

  /** Something that the result rests on was chosen or stored since it was asked for. */
  get stale(): boolean {
    return this.result !== null && this.#outdated;
  }

  choose(itemId: string, choice: KitChoice): void {
    this.choices = { ...this.choices, [itemId]: choice };
    this.outdate();
  }

  limit(limits: Limits): void {
    this.limits = limits;
    this.outdate();
  }

  take(scenarioId: string): void {
    this.scenarioId = scenarioId;
    this.outdate();
  }

  outdate(): void {
    this.#outdated = true;
  }

  /** Scenarios were stored: of them, only placement and rules of the one searched with matter. */
  reconsider(scenarios: readonly Scenario[]): void {
    const now = scenarios.find(({ id }) => id === this.like?.id);
    if (this.like !== null && (now === undefined || bearing(now) !== bearing(this.like))) this.outdate();
  }

  /** @param like the scenario that the request names */
  async run(request: KitSearchRequest, like: Scenario): Promise<void> {
    if (this.running) return;
    const before = this.like;
    const runId = this.#begin(like);
    const outcome = await this.#calls.attempt('kits.search', { ...request, runId });
    this.#end();
    if (outcome.ok) this.result = outcome.value;
    else this.#fail(outcome.error, before);
  }

  /** Ends the search under way; it answers with what it has. */
  stop(): void {
    this.#run.cancel();
  }

  /** What is shown stays what was found before. */
  #fail(error: CallError, before: Scenario | null): void {
    this.failure = error;
    this.like = before;
    this.outdate();
  }

  #begin(like: Scenario): string {
    this.like = like;
    this.#outdated = false;
    this.failure = null;
    const runId = this.#run.begin();
    this.#askLater(runId);
    return runId;
  }

  #end(): void {
    clearTimeout(this.#timer);
    this.#run.end();
  }

  #askLater(runId: string): void {
    this.#timer = setTimeout(() => void this.#ask(runId), askEveryMs);
  }

  /** What has been found so far. */
  async #ask(runId: string): Promise<void> {
    const outcome = await this.#calls.attempt('kits.soFar', { runId });
    if (!this.#run.isUnderWay(runId)) return;
    if (outcome.ok && outcome.value.result !== null) this.result = outcome.value.result;
    this.#askLater(runId);
  }
}

/** What a search takes from a scenario, as text: equal texts mean the same. */
function bearing({ placement, rules }: Scenario): string {
  return JSON.stringify({ placement, rules });
}
