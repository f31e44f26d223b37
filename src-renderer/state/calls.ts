import type { CallInput, CallName, CallResult, Invoke } from '../../shared-types/contract.ts';
import type { CallError, Outcome } from '../../shared-types/outcome.ts';
import type { Place } from './edit-history.svelte.ts';
import type { NoticesState } from './notices.svelte.ts';
import { addressOf } from './route.svelte.ts';

/** Where backups and other catalogues are, for a catalogue that can't be read or written. */
const dataPlace: Place = { words: 'See your data', address: addressOf('about') };

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
    if (!outcome.ok) this.#tell(outcome.error);
    return outcome;
  }

  /** Calls, and leaves it to the caller to tell of a failure: it may be one that nobody waits for any more. */
  attempt<N extends CallName>(name: N, input: CallInput<N>): Promise<Outcome<CallResult<N>>> {
    return this.#invoke(name, input);
  }

  /** Calls for a form, which shows fields in error itself; any other failure becomes a notice. */
  async submit<N extends CallName>(name: N, input: CallInput<N>): Promise<Outcome<CallResult<N>>> {
    const outcome = await this.#invoke(name, input);
    if (!outcome.ok && outcome.error.fields.length === 0) this.#tell(outcome.error);
    return outcome;
  }

  #tell({ code, message }: CallError): void {
    this.notices.fail(message, code === 'storage' ? dataPlace : null);
  }
}
