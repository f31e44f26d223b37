import type { Invoke } from '../../shared-types/contract.ts';
import { longestWhat, longestWhere } from '../../shared-types/diagnostics.ts';

const mostAMinute = 6;
const minuteMs = 60_000;

/** The part of a window that tells of faults nobody caught. */
interface Page {
  addEventListener(type: 'error', listener: (event: Pick<ErrorEvent, 'error' | 'message'>) => void): void;
  addEventListener(
    type: 'unhandledrejection',
    listener: (event: Pick<PromiseRejectionEvent, 'reason'>) => void,
  ): void;
}

/** Writes faults of the page to the log: few a minute, and never one that comes of reporting. */
export class FaultReporter {
  readonly #invoke: Invoke;
  readonly #where: () => string;
  #reportedAtMs: readonly number[] = [];

  /** `where` names the screen that is open. */
  constructor(invoke: Invoke, where: () => string) {
    this.#invoke = invoke;
    this.#where = where;
  }

  listen(page: Page): void {
    page.addEventListener('error', ({ error, message }) => this.report((error as unknown) ?? message));
    page.addEventListener('unhandledrejection', ({ reason }) => this.report(reason as unknown));
  }

  report(fault: unknown): void {
    const nowMs = Date.now();
    const recent = this.#reportedAtMs.filter((atMs) => nowMs - atMs < minuteMs);
    if (recent.length >= mostAMinute) return;
    this.#reportedAtMs = [...recent, nowMs];
    const fields = {
      where: this.#where().slice(0, longestWhere),
      what: textOf(fault).slice(0, longestWhat),
    };
    // The client answers a failure and does not throw one; a fault that can't be written down is on the console all the same.
    void this.#invoke('diagnostics.report', fields);
  }
}

/** Message and stack; browsers differ in whether the stack repeats the message. */
function textOf(fault: unknown): string {
  if (!(fault instanceof Error)) return String(fault);
  const { message, stack = '' } = fault;
  return stack.includes(message) ? stack : `${fault.name}: ${message}\n${stack}`;
}
