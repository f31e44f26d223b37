import { failure, type Outcome } from '../../shared-types/outcome.ts';
import type { Preferences, Settings } from '../../shared-types/settings.ts';
import type { Calls } from './calls.ts';
import { alike, carriedOver } from './carry-over.ts';
import { Delay } from './delay.ts';
import type { EditHistory, Place } from './edit-history.svelte.ts';
import { settingsWords } from './edit-words.ts';
import { Form } from './form.svelte.ts';
import { addressOf } from './route.svelte.ts';
import { Turns } from './turns.ts';

/**
 * Told of settings as they are stored now, and as they were before; `before` is null on loading. `restored` is set where a
 * change was taken back or made again.
 */
type Taken = (now: Settings, before: Settings | null, restored: boolean) => void;

/** What the form of settings holds: the tour to compare on and the weights are changed elsewhere. */
export type GeneralSettings = Omit<Settings, 'tourId' | 'preferences'>;

const subject = 'settings';

/** A slider passes many values on its way; only where it rests is stored. */
const restMs = 600;

export class SettingsState {
  /** What is wanted now; null until loaded. */
  current = $state.raw<Settings | null>(null);
  /** Weights and limits were changed and are not stored yet. */
  waiting = $state(false);
  /** null until loaded. */
  form = $state.raw<Form<GeneralSettings> | null>(null);
  readonly #calls: Calls;
  readonly #taken: Taken;
  readonly #history: EditHistory;
  readonly #turns = new Turns();
  readonly #rest = new Delay(restMs);
  #stored: Settings | null = null;
  /** Ends the wait of an undo for weights that are yet to be stored. */
  #rested: () => void = () => undefined;

  constructor(calls: Calls, taken: Taken, history: EditHistory) {
    this.#calls = calls;
    this.#taken = taken;
    this.#history = history;
  }

  /** @returns whether they could be read */
  async load(): Promise<boolean> {
    const outcome = await this.#calls.ask('settings.get', {});
    if (!outcome.ok) return false;
    this.current = outcome.value;
    const store = (draft: GeneralSettings): Promise<Outcome<Settings>> => this.save(draft);
    this.form = new Form(generalOf(outcome.value), { root: 'settings', live: true, store });
    this.#take(outcome.value);
    return true;
  }

  /** Shows the change at once, stores it, and goes back to what is stored when it is refused. */
  save(change: Partial<Settings>): Promise<Outcome<Settings>> {
    return this.#history.during(() => this.#save('submit', change));
  }

  /** Takes weights and limits that were found good, and stores them once the rider pauses. */
  keepPreferences(preferences: Preferences): void {
    if (this.current === null) return;
    this.current = { ...this.current, preferences };
    if (!this.waiting)
      void this.#history.during(() => new Promise<void>((rested) => (this.#rested = rested)));
    this.waiting = true;
    this.#rest.run(() => {
      this.waiting = false;
      void this.save({ preferences }).finally(this.#rested);
    });
  }

  async #save(how: 'submit' | 'attempt', change: Partial<Settings>): Promise<Outcome<Settings>> {
    if (this.current === null) return failure('storage', 'The settings have not been read yet.');
    this.current = { ...this.current, ...change };
    const turn = this.#turns.take();
    const outcome = await this.#calls[how]('settings.save', { settings: this.current });
    if (outcome.ok && turn.settle()) {
      if (how === 'submit' && this.#stored !== null) this.#record(this.#stored, outcome.value);
      this.#take(outcome.value, how === 'attempt');
    }
    if (!outcome.ok && turn.isNewest()) this.current = this.#stored;
    return outcome;
  }

  #record(before: Settings, after: Settings): void {
    const edit = settingsWords(before, after);
    if (edit === null) return;
    const place = placeOf(before, after);
    this.#history.record({
      ...edit,
      subject,
      undone: place,
      redone: place,
      undo: () => this.#carry(after, before),
      redo: () => this.#carry(before, after),
    });
  }

  /** Only what the change touched goes back; what else was changed in the settings since stays. */
  #carry(from: Settings, to: Settings): Promise<Outcome<Settings>> {
    return this.#save('attempt', this.current === null ? {} : carriedOver(this.current, from, to));
  }

  #take(settings: Settings, restored = false): void {
    const before = this.#stored;
    this.#stored = settings;
    this.form?.adopt(generalOf(settings));
    this.#taken(settings, before, restored);
  }
}

function generalOf(settings: Settings): GeneralSettings {
  const general: Partial<Settings> = { ...settings };
  delete general.tourId;
  delete general.preferences;
  return general as GeneralSettings;
}

function placeOf(before: Settings, after: Settings): Place {
  const weighed = !alike(before.preferences, after.preferences) || before.tourId !== after.tourId;
  return weighed
    ? { words: 'See the trade-offs', address: addressOf('trade-offs') }
    : { words: 'See the settings', address: addressOf('about') };
}
