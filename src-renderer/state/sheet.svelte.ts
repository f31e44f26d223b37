import { tellsSwings, type SheetForm, type SheetTable } from '../../shared-types/sheet.ts';
import type { Calls } from './calls.ts';
import type { ComparisonSubject } from './comparison.svelte.ts';
import { handOver } from './hand-over.ts';
import { LongRun } from './long-run.svelte.ts';
import type { RunProgress } from './run-progress.svelte.ts';
import { Turns } from './turns.ts';

/** The comparison sheet on its way to a file. */
export class SheetState {
  /** Look for what would change the answer first. */
  withSwings = $state(true);
  /** The table of the next CSV. */
  table = $state<SheetTable>('scenarios');
  /** The last save was stopped. */
  cancelled = $state(false);
  readonly #calls: Calls;
  readonly #subject: () => ComparisonSubject | null;
  readonly #turns = new Turns();
  readonly #run: LongRun;

  constructor(calls: Calls, subject: () => ComparisonSubject | null) {
    this.#calls = calls;
    this.#subject = subject;
    this.#run = new LongRun(calls);
  }

  get running(): boolean {
    return this.#run.running;
  }

  get progress(): RunProgress {
    return this.#run.progress;
  }

  /** Has the sheet written, and tells where it went. */
  async save(form: SheetForm): Promise<void> {
    const subject = this.#subject();
    if (subject === null) return;
    const turn = this.#turns.take();
    this.cancelled = false;
    const { withSwings } = this;
    const runId = this.#run.begin(tellsSwings(form, withSwings));
    const outcome = await this.#calls.attempt('sheet.save', { ...subject, runId, withSwings, form });
    if (!turn.isNewest()) return;
    this.#run.end();
    if (outcome.ok) handOver(outcome, this.#calls.notices);
    else if (outcome.error.code === 'cancelled') this.cancelled = true;
    else this.#calls.notices.fail(outcome.error.message);
  }

  /** Stops a save at the rider's wish; whatever it still answers is too late. */
  cancel(): void {
    this.#turns.take();
    this.#run.stop();
    this.cancelled = true;
  }
}
