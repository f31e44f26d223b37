import { untrack } from 'svelte';
import type { CallError, Outcome } from '../../shared-types/outcome.ts';
import { Delay } from './delay.ts';
import { Turns } from './turns.ts';

/** Saves that follow each other closely cost one question. */
const burstMs = 120;

/** A question about what is stored, asked anew as that changes; an old answer stays readable while a new one is made. */
export abstract class StandingQuestion<Asking, Shown> {
  shown = $state.raw<Shown | null>(null);
  failure = $state.raw<CallError | null>(null);
  updating = $state(false);
  readonly #burst = new Delay(burstMs);
  readonly #turns = new Turns();

  /** What would be asked now; null while there is nothing to ask about. */
  protected abstract asking(): Asking | null;
  /** Gets the answer, with what it was asked about: the choosers may have moved on since. */
  protected abstract ask(asking: Asking): Promise<Outcome<Shown>>;

  /** Asks anew whenever what is stored or chosen changes; for an effect, which tracks what is read here. */
  follow(): void {
    const asked = this.asking() !== null;
    untrack(() => this.#request(asked));
  }

  async run(): Promise<void> {
    const turn = this.#turns.take();
    const asking = this.asking();
    this.updating = asking !== null;
    if (asking === null) {
      this.shown = null;
      this.failure = null;
      return;
    }
    const outcome = await this.ask(asking);
    if (!turn.isNewest()) return;
    this.updating = false;
    this.failure = outcome.ok ? null : outcome.error;
    if (outcome.ok) this.shown = outcome.value;
  }

  #request(asked: boolean): void {
    this.updating = asked;
    this.#burst.run(() => void this.run());
  }
}
