/** Runs the last of a burst of calls, once the burst has paused. */
export class Delay {
  readonly #waitMs: number;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(waitMs: number) {
    this.#waitMs = waitMs;
  }

  run(action: () => void): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(action, this.#waitMs);
  }
}
