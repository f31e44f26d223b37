const minuteMs = 60_000;
/** More different faults than these at a time are no loop any more. */
const mostRemembered = 100;

interface Seen {
  times: number;
  writtenAtMs: number;
}

/** Keeps a fault in a loop from filling the log: of one that comes again and again, ever fewer are written. */
export class FaultRepeats {
  readonly #seen = new Map<string, Seen>();

  /**
   * How many times this fault has come so far, where it is worth writing: the first time, the tenth, the hundredth and so on,
   * and whenever it was not written for a minute; else null.
   */
  worthWriting(fault: string, nowMs: number): number | null {
    const seen = this.#seen.get(fault) ?? this.#remember(fault);
    seen.times += 1;
    if (!isPowerOfTen(seen.times) && nowMs - seen.writtenAtMs < minuteMs) return null;
    seen.writtenAtMs = nowMs;
    return seen.times;
  }

  #remember(fault: string): Seen {
    const [oldest] = this.#seen.keys();
    if (oldest !== undefined && this.#seen.size >= mostRemembered) this.#seen.delete(oldest);
    const seen = { times: 0, writtenAtMs: 0 };
    this.#seen.set(fault, seen);
    return seen;
  }
}

function isPowerOfTen(count: number): boolean {
  return Number.isInteger(Math.log10(count));
}
