import type {
  CatalogueChoices,
  CatalogueState,
  CatalogueTrouble,
} from '../../shared-types/catalogue-file.ts';
import type { CallInput, CallName, CallResult } from '../../shared-types/contract.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { Calls } from './calls.ts';
import { Turns } from './turns.ts';

/** What was asked and refused, and the sentence that says why. */
export interface Refusal {
  readonly act: string;
  readonly message: string;
}

/** Each thing a rider can ask of the place, by a name that its button and its refusal share. */
export const acts = {
  tryAgain: 'try-again',
  backUp: 'back-up',
  startEmpty: 'start-empty',
  openOther: 'open-other',
  restoreNewest: 'restore-newest',
  restore: (name: string) => `restore ${name}`,
  open: (path: string) => `open ${path}`,
} as const;

interface Surroundings {
  /** Loads the page anew, on the catalogue that took the place. */
  readonly reload: () => void;
  /** Done once nothing is on its way to the catalogue any more. */
  readonly settled: () => Promise<void>;
}

/** Which file the catalogue is in, what keeps it from being opened, and what could take its place. */
export class CataloguePlaceState {
  /** null until it was asked. */
  state = $state.raw<CatalogueState | null>(null);
  /** null until they were looked for, which reads every backup. */
  choices = $state.raw<CatalogueChoices | null>(null);
  /** Why they could not be looked for; null where they could. */
  lookFault = $state.raw<string | null>(null);
  /** The act under way. */
  busy = $state.raw<string | null>(null);
  refusal = $state.raw<Refusal | null>(null);
  /** The host has no dialog to choose a folder with. */
  asksPath = $state(false);
  /** Another catalogue took the place: what the page shows is of the former, until it is loaded anew. */
  replaced = $state(false);
  readonly #looks = new Turns();
  readonly #calls: Calls;
  readonly #surroundings: Surroundings;

  constructor(calls: Calls, surroundings: Surroundings) {
    this.#calls = calls;
    this.#surroundings = surroundings;
  }

  get trouble(): CatalogueTrouble | null {
    return this.state?.trouble ?? null;
  }

  /** At the start; says once what the rider should know of the file. */
  async ask(): Promise<void> {
    const outcome = await this.#calls.ask('catalogue.state', {});
    if (!outcome.ok) return;
    this.state = outcome.value;
    const { notKept, backupFault } = outcome.value;
    for (const text of [notKept, backupFault]) if (text !== null) this.#calls.notices.fail(text);
  }

  /** Why this act was refused; null where it was not the last one asked. */
  refusedAt(act: string): string | null {
    return this.refusal?.act === act ? this.refusal.message : null;
  }

  /** Looks for backups and other catalogues, while the rider may ask for anything else. */
  async look(): Promise<void> {
    const turn = this.#looks.take();
    const outcome = await this.#calls.attempt('catalogue.choices', {});
    if (!turn.isNewest()) return;
    this.lookFault = outcome.ok ? null : outcome.error.message;
    if (outcome.ok) this.choices = outcome.value;
  }

  async tryAgain(): Promise<void> {
    const state = await this.#ask(acts.tryAgain, () => this.#calls.attempt('catalogue.tryAgain', {}));
    if (state === null) return;
    this.state = state;
    if (state.trouble === null) this.#leave();
    else this.refusal = { act: acts.tryAgain, message: 'Tried again: it is not open yet.' };
  }

  async backUp(): Promise<void> {
    const made = await this.#ask(acts.backUp, () => this.#settled('catalogue.backUp', {}));
    if (made === null) return;
    this.#calls.notices.tell(`Made a backup: ${made.name}.`);
    await this.look();
  }

  /** The newest sound backup where `name` is null. */
  async restore(name: string | null): Promise<void> {
    const act = name === null ? acts.restoreNewest : acts.restore(name);
    if ((await this.#ask(act, () => this.#settled('catalogue.restore', { name }))) !== null) this.#leave();
  }

  async startEmpty(): Promise<void> {
    const state = await this.#ask(acts.startEmpty, () => this.#settled('catalogue.startEmpty', {}));
    if (state !== null) this.#leave();
  }

  /** One of those found beside the catalogue. */
  open(path: string): Promise<void> {
    return this.#open(acts.open(path), path);
  }

  /** Null asks in a dialog of the host; one that has none has the page ask for the path. */
  openOther(path: string | null): Promise<void> {
    return this.#open(acts.openOther, path);
  }

  async #open(act: string, path: string | null): Promise<void> {
    const opening = await this.#ask(act, () => this.#settled('catalogue.openOther', { path }));
    if (opening?.as === 'opened') this.#leave();
    if (opening?.as === 'ask-page') this.asksPath = true;
  }

  /** Calls once nothing is on its way to the catalogue that is in use now. */
  async #settled<N extends CallName>(name: N, input: CallInput<N>): Promise<Outcome<CallResult<N>>> {
    await this.#surroundings.settled();
    return this.#calls.attempt(name, input);
  }

  /** One act at a time; null where it was refused, which is told beside its button. */
  async #ask<T>(act: string, call: () => Promise<Outcome<T>>): Promise<T | null> {
    if (this.busy !== null) return null;
    this.busy = act;
    this.refusal = null;
    const outcome = await call();
    this.busy = null;
    if (outcome.ok) return outcome.value;
    const [field] = outcome.error.fields;
    this.refusal = {
      act,
      message: field === undefined ? outcome.error.message : `Allowed: ${field.allowed}.`,
    };
    return null;
  }

  #leave(): void {
    this.replaced = true;
    this.#surroundings.reload();
  }
}
