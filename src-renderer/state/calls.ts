import type { CallInput, CallName, CallResult, Invoke } from '../../shared-types/contract.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { NoticesState } from './notices.svelte.ts';

/** The calls of the workbench, with every failure told to the rider. */
export class Calls {
  readonly #invoke: Invoke;
  readonly notices: NoticesState;

  constructor(invoke: Invoke, notices: NoticesState) {
    this.#invoke = invoke;
    this.notices = notices;
  }

  /** Calls, and shows a notice whatever the failure. */
  async ask<N extends CallName>(name: N, input: CallInput<N>): Promise<Outcome<CallResult<N>>> {
    const outcome = await this.#invoke(name, input);
    if (!outcome.ok) this.notices.fail(outcome.error.message);
    return outcome;
  }

  /** Calls, and leaves it to the caller to tell of a failure: it may be one that nobody waits for any more. */
  attempt<N extends CallName>(name: N, input: CallInput<N>): Promise<Outcome<CallResult<N>>> {
    return this.#invoke(name, input);
  }

  /** Calls for a form, which shows fields in error itself; any other failure becomes a notice. */
  async submit<N extends CallName>(name: N, input: CallInput<N>): Promise<Outcome<CallResult<N>>> {
    const outcome = await this.#invoke(name, input);
    if (!outcome.ok && outcome.error.fields.length === 0) this.notices.fail(outcome.error.message);
    return outcome;
  }
}
