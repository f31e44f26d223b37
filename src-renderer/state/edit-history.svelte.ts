import type { Outcome } from '../../shared-types/outcome.ts';
import type { NoticesState } from './notices.svelte.ts';

/** Where a change was made, for a link: its words and its address. */
export interface Place {
  readonly words: string;
  readonly address: string;
}

/** One stored change. Taking it back and making it again go through the workbench, which may refuse either. */
export interface EditStep {
  /** As a sentence without its full stop: `Retired Phone`. */
  readonly words: string;
  /** What was changed, such as `items/demo-phone`. */
  readonly subject: string;
  /** Where to look once it is taken back, and once it is made (again). */
  readonly undone: Place;
  readonly redone: Place;
  /** Changes of the same field soon after each other are one step; null for a change that is always its own. */
  readonly field: string | null;
  readonly undo: () => Promise<Outcome<unknown>>;
  readonly redo: () => Promise<Outcome<unknown>>;
}

const mostSteps = 100;
/** How soon after the last change of a field a further one belongs to it. */
const sameFieldMs = 1000;

/** The stored changes of this session, to be taken back and made again in order. */
export class EditHistory {
  #done = $state.raw<readonly EditStep[]>([]);
  #undone = $state.raw<readonly EditStep[]>([]);
  #storing = $state.raw<readonly Promise<unknown>[]>([]);
  #recordedAtMs = Number.NEGATIVE_INFINITY;
  #turn: Promise<unknown> = Promise.resolve();
  readonly #notices: NoticesState;

  constructor(notices: NoticesState) {
    this.#notices = notices;
  }

  get nextUndo(): EditStep | null {
    return this.#done.at(-1) ?? null;
  }

  get nextRedo(): EditStep | null {
    return this.#undone.at(-1) ?? null;
  }

  /** Something is on its way to the catalogue. */
  get storing(): boolean {
    return this.#storing.length > 0;
  }

  /** Done once nothing is on its way. */
  async settled(): Promise<void> {
    while (this.storing) await Promise.allSettled(this.#storing);
  }

  /** Takes a change that was stored; what had been taken back before it can no longer be made again. */
  record(step: EditStep): EditStep {
    const last = this.#done.at(-1);
    const nowMs = Date.now();
    const joins =
      last !== undefined &&
      step.field !== null &&
      last.field === step.field &&
      last.subject === step.subject &&
      this.#undone.length === 0 &&
      nowMs - this.#recordedAtMs <= sameFieldMs;
    const taken = joins ? { ...step, undo: last.undo } : step;
    this.#done = [...(joins ? this.#done.slice(0, -1) : this.#done), taken].slice(-mostSteps);
    this.#undone = [];
    this.#recordedAtMs = nowMs;
    return taken;
  }

  /** Forgets all steps: so much was changed at once that they would no longer fit. */
  forget(): void {
    this.#done = [];
    this.#undone = [];
  }

  /** Keeps an undo waiting until this store has been answered and recorded. */
  async during<T>(store: () => Promise<T>): Promise<T> {
    const work = store();
    this.#storing = [...this.#storing, work];
    try {
      return await work;
    } finally {
      this.#storing = this.#storing.filter((each) => each !== work);
    }
  }

  /** Takes back the last change, or the one given wherever it stands; one that was taken back already is let be. */
  undo(wanted?: EditStep): Promise<void> {
    return this.#inTurn(async () => {
      const step = wanted ?? this.nextUndo;
      if (step === null || !this.#done.includes(step)) return;
      const outcome = await step.undo();
      if (!outcome.ok) {
        this.#refused('Not taken back', step, outcome.error.message);
        return;
      }
      this.#done = this.#done.filter((each) => each !== step);
      this.#undone = [...this.#undone, step];
      this.#tell('Taken back', step, step.undone);
    });
  }

  redo(): Promise<void> {
    return this.#inTurn(async () => {
      const step = this.nextRedo;
      if (step === null) return;
      const outcome = await step.redo();
      if (!outcome.ok) {
        this.#refused('Not made again', step, outcome.error.message);
        return;
      }
      this.#undone = this.#undone.filter((each) => each !== step);
      this.#done = [...this.#done, step];
      this.#tell('Made again', step, step.redone);
    });
  }

  /** One after the other, each once all that was on its way is stored. */
  #inTurn(work: () => Promise<void>): Promise<void> {
    const turn = this.#turn.then(async () => {
      await this.settled();
      await work();
    });
    this.#turn = turn.catch(() => undefined);
    return turn;
  }

  /** An offer to take back an earlier change of the same thing would now take back something else. */
  #tell(what: string, step: EditStep, link: Place): void {
    this.#recordedAtMs = Number.NEGATIVE_INFINITY;
    this.#notices.withdraw(step.subject);
    this.#notices.tell(`${what}: ${step.words}.`, null, { link });
  }

  #refused(what: string, step: EditStep, why: string): void {
    this.#notices.fail(`${what}: ${step.words}. ${why}`);
  }
}
