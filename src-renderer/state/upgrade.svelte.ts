import type { Item } from '../../shared-types/item.ts';
import type { CallError } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Tour } from '../../shared-types/tour.ts';
import type { Upgrade, UpgradeBase, UpgradeLine, UpgradeQuestion } from '../../shared-types/upgrade.ts';
import type { Calls } from './calls.ts';
import { LongRun } from './long-run.svelte.ts';
import type { RunProgress } from './run-progress.svelte.ts';
import { Turns } from './turns.ts';
import { baseIn, baseLines, offeredItems, stillOffered, type BaseLine } from './upgrade-choice.ts';

export interface UpgradeSources {
  readonly items: () => readonly Item[];
  readonly scenarios: () => readonly Scenario[];
  readonly tours: () => readonly Tour[];
}

/** Which lines of a change: those that come in, or those that go out. */
export type UpgradeSide = 'add' | 'remove';

/** More pieces of one item than this no question takes. */
export const mostPieces = 99;

/** A change of the kit and its check: asked for by the rider, since it takes a while. */
export class UpgradeState {
  failure = $state.raw<CallError | null>(null);
  /** The last run was stopped. */
  cancelled = $state(false);
  readonly #calls: Calls;
  readonly #sources: UpgradeSources;
  readonly #turns = new Turns();
  readonly #run: LongRun;
  #base = $state.raw<UpgradeBase>({ as: 'owned' });
  #lines = $state.raw<Readonly<Record<UpgradeSide, readonly UpgradeLine[]>>>({ add: [], remove: [] });
  #leftOut = $state.raw<readonly string[]>([]);
  #found = $state.raw<{ readonly upgrade: Upgrade; readonly question: string } | null>(null);
  #outdated = $state(false);
  #changes = 0;

  constructor(calls: Calls, sources: UpgradeSources) {
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

  get base(): UpgradeBase {
    return baseIn(this.#sources.scenarios(), this.#base);
  }

  set base(base: UpgradeBase) {
    this.#base = base;
  }

  /** What can go out. */
  get carried(): readonly BaseLine[] {
    return baseLines(this.#sources.items(), this.#sources.scenarios(), this.base);
  }

  /** What can come in. */
  get offered(): readonly Item[] {
    return offeredItems(this.#sources.items());
  }

  /** What is asked now: chosen lines and tours, as far as they are still there. Tours planned later take part. */
  get question(): UpgradeQuestion {
    const [{ carried, offered }, { add, remove }] = [this, this.#lines];
    const carriedOf = (itemId: string): number =>
      carried.find(({ item }) => item.id === itemId)?.quantity ?? 0;
    return {
      base: this.base,
      add: [...stillOffered(add, (itemId) => (offered.some(({ id }) => id === itemId) ? mostPieces : 0))],
      remove: [...stillOffered(remove, carriedOf)],
      tourIds: this.#sources.tours().flatMap(({ id }) => (this.#leftOut.includes(id) ? [] : [id])),
    };
  }

  /** The last result; it stays readable while another is found. */
  get shown(): Upgrade | null {
    return this.#found?.upgrade ?? null;
  }

  /** Why what is shown is not the answer to what is asked now. */
  get stale(): 'changed' | 'another' | null {
    if (this.#found === null || this.running) return null;
    if (this.#found.question !== JSON.stringify(this.question)) return 'another';
    return this.#outdated ? 'changed' : null;
  }

  /** Lets so many pieces of an item come in or go out; 0 takes the line off. */
  put(side: UpgradeSide, itemId: string, quantity: number): void {
    const others = this.#lines[side].filter((line) => line.itemId !== itemId);
    this.#lines = { ...this.#lines, [side]: quantity > 0 ? [...others, { itemId, quantity }] : others };
  }

  /** Checks on a tour, or leaves it out. */
  checkOn(tourId: string, on: boolean): void {
    const others = this.#leftOut.filter((id) => id !== tourId);
    this.#leftOut = on ? others : [...others, tourId];
  }

  async check(): Promise<void> {
    const turn = this.#turns.take();
    this.failure = null;
    this.cancelled = false;
    const [question, changes] = [this.question, this.#changes];
    const outcome = await this.#calls.attempt('upgrade.check', { ...question, runId: this.#run.begin() });
    if (!turn.isNewest()) return;
    this.#run.end();
    if (outcome.ok) {
      this.#found = { upgrade: outcome.value, question: JSON.stringify(question) };
      this.#outdated = changes !== this.#changes;
    } else if (outcome.error.code === 'cancelled') this.cancelled = true;
    else this.failure = outcome.error;
  }

  /** Stops the run at the rider's wish; whatever it still answers is too late. */
  cancel(): void {
    this.#turns.take();
    this.#run.stop();
    this.cancelled = true;
  }

  /** What is stored has changed, so that the result shown is of what was before. */
  outdate(): void {
    this.#changes += 1;
    this.#outdated = true;
  }
}
