/** One question among those asked about the same subject. */
export interface Turn {
  /** No later question has been asked. */
  isNewest(): boolean;
  /** Marks the answer as taken; false when the answer to a later question has been taken already. */
  settle(): boolean;
}

/** Numbers the questions asked about a subject, so that late answers to old questions never overwrite newer ones. */
export class Turns {
  readonly #asked = new Map<string, number>();
  readonly #settled = new Map<string, number>();

  take(subject = ''): Turn {
    const turn = (this.#asked.get(subject) ?? 0) + 1;
    this.#asked.set(subject, turn);
    return {
      isNewest: () => this.#asked.get(subject) === turn,
      settle: () => this.#settle(subject, turn),
    };
  }

  #settle(subject: string, turn: number): boolean {
    if (turn < (this.#settled.get(subject) ?? 0)) return false;
    this.#settled.set(subject, turn);
    return true;
  }
}
