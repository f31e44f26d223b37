import type { Diagnostics } from '../../shared-types/diagnostics.ts';
import type { Calls } from './calls.ts';
import { diagnosticsText } from './diagnostics-text.ts';

/** What helps to find a fault, and whether it could be copied. */
export class DiagnosticsState {
  /** null until they were asked for. */
  facts = $state.raw<Diagnostics | null>(null);
  /** `refused`: the page may not write to the clipboard, so that the rider has to copy the text themselves. */
  copied = $state.raw<'no' | 'yes' | 'refused'>('no');
  readonly #calls: Calls;
  readonly #copy: (text: string) => Promise<boolean>;

  constructor(calls: Calls, copy: (text: string) => Promise<boolean>) {
    this.#calls = calls;
    this.#copy = copy;
  }

  get text(): string {
    return this.facts === null ? '' : diagnosticsText(this.facts);
  }

  async load(): Promise<void> {
    this.copied = 'no';
    const outcome = await this.#calls.ask('diagnostics.get', {});
    if (outcome.ok) this.facts = outcome.value;
  }

  async copy(): Promise<void> {
    this.copied = (await this.#copy(this.text)) ? 'yes' : 'refused';
  }
}
