import type { Calls } from './calls.ts';

/** A run shorter than this shows no progress: it would only flicker. */
const showAfterMs = 400;
const askEveryMs = 200;
/** Sooner, the time left is a guess. */
const leastShareToTell = 0.1;
const leastMsToTell = 1000;
const msPerSecond = 1000;

/** How far the comparison under way is, asked again and again while it runs. */
export class RunProgress {
  /** The run has lasted long enough for the rider to wonder. */
  shown = $state(false);
  /** Done of it, 0..1. */
  share = $state(0);
  /** null while it would be a guess. */
  secondsLeft = $state<number | null>(null);
  readonly #calls: Calls;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #runId: string | null = null;
  #startedMs = 0;

  constructor(calls: Calls) {
    this.#calls = calls;
  }

  /** Begins to follow a run, in place of any other; what is shown already stays shown, and a run asked for is at once. */
  follow(runId: string, atOnce = false): void {
    this.#begin(runId);
    this.shown ||= atOnce;
    this.#startedMs = performance.now();
    this.#timer = setTimeout(
      () => {
        this.shown = true;
        void this.#ask(runId);
      },
      this.shown ? 0 : showAfterMs,
    );
  }

  stop(): void {
    this.#begin(null);
    this.shown = false;
  }

  #begin(runId: string | null): void {
    clearTimeout(this.#timer);
    this.#runId = runId;
    this.share = 0;
    this.secondsLeft = null;
  }

  async #ask(runId: string): Promise<void> {
    const outcome = await this.#calls.attempt('runs.progress', { runId });
    if (this.#runId !== runId) return;
    if (outcome.ok && outcome.value.share !== null) this.#take(outcome.value.share);
    this.#timer = setTimeout(() => void this.#ask(runId), askEveryMs);
  }

  #take(share: number): void {
    this.share = share;
    const passedMs = performance.now() - this.#startedMs;
    const tells = share >= leastShareToTell && passedMs >= leastMsToTell;
    this.secondsLeft = tells ? (passedMs * (1 - share)) / share / msPerSecond : null;
  }
}
