import { failure, type Outcome } from '../../shared-types/outcome.ts';
import type { Preferences, Settings } from '../../shared-types/settings.ts';
import type { Calls } from './calls.ts';
import { Delay } from './delay.ts';
import { Turns } from './turns.ts';

/** Told of settings as they are stored now, and as they were before; `before` is null on loading. */
type Taken = (now: Settings, before: Settings | null) => void;

/** A slider passes many values on its way; only where it rests is stored. */
const restMs = 600;

export class SettingsState {
  /** What is wanted now; null until loaded. */
  current = $state.raw<Settings | null>(null);
  /** Weights and limits were changed and are not stored yet. */
  waiting = $state(false);
  readonly #calls: Calls;
  readonly #taken: Taken;
  readonly #turns = new Turns();
  readonly #rest = new Delay(restMs);
  #stored: Settings | null = null;

  constructor(calls: Calls, taken: Taken) {
    this.#calls = calls;
    this.#taken = taken;
  }

  async load(): Promise<void> {
    const outcome = await this.#calls.ask('settings.get', {});
    if (!outcome.ok) return;
    this.current = outcome.value;
    this.#take(outcome.value);
  }

  /** Shows the change at once, stores it, and goes back to what is stored when it is refused. */
  async save(change: Partial<Settings>): Promise<Outcome<Settings>> {
    if (this.current === null) return failure('storage', 'The settings have not been read yet.');
    this.current = { ...this.current, ...change };
    const turn = this.#turns.take();
    const outcome = await this.#calls.submit('settings.save', { settings: this.current });
    if (outcome.ok && turn.settle()) this.#take(outcome.value);
    if (!outcome.ok && turn.isNewest()) this.current = this.#stored;
    return outcome;
  }

  /** Takes weights and limits that were found good, and stores them once the rider pauses. */
  keepPreferences(preferences: Preferences): void {
    if (this.current === null) return;
    this.current = { ...this.current, preferences };
    this.waiting = true;
    this.#rest.run(() => {
      this.waiting = false;
      void this.save({ preferences });
    });
  }

  #take(settings: Settings): void {
    const before = this.#stored;
    this.#stored = settings;
    this.#taken(settings, before);
  }
}
