import type { Outcome } from '../../shared-types/outcome.ts';
import type { Tour, TourDraft, TrackProfile } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import { Rows } from './rows.svelte.ts';
import { Turns } from './turns.ts';

export class ToursState {
  readonly rows = new Rows<Tour>();
  readonly #calls: Calls;
  readonly #changed: () => void;
  readonly #turns = new Turns();

  constructor(calls: Calls, changed: () => void) {
    this.#calls = calls;
    this.#changed = changed;
  }

  async load(): Promise<void> {
    const outcome = await this.#calls.ask('tours.list', {});
    if (outcome.ok) this.rows.fill(outcome.value);
  }

  async add(tour: TourDraft): Promise<Tour | null> {
    const outcome = await this.#calls.ask('tours.save', { tour });
    return outcome.ok ? this.#take(outcome.value) : null;
  }

  async save(id: string, tour: TourDraft): Promise<Outcome<Tour>> {
    const turn = this.#turns.take(id);
    const outcome = await this.#calls.submit('tours.save', { id, tour });
    if (outcome.ok && turn.settle()) this.#take(outcome.value);
    return outcome;
  }

  async remove(id: string): Promise<void> {
    const outcome = await this.#calls.ask('tours.remove', { id });
    if (!outcome.ok) return;
    const place = this.rows.drop(id);
    this.#changed();
    this.#calls.notices.tell(
      `Removed ${outcome.value.label}.`,
      () => void this.#putBack(outcome.value, place),
    );
  }

  /** Reads a track file into its grades; a file that is not one is told of and gives null. */
  async readTrack(name: string, text: string): Promise<TrackProfile | null> {
    const outcome = await this.#calls.ask('tours.readTrack', { name, text });
    return outcome.ok ? outcome.value : null;
  }

  async #putBack({ id, ...tour }: Tour, place: number): Promise<void> {
    const outcome = await this.#calls.ask('tours.save', { id, tour });
    if (outcome.ok) this.#take(outcome.value, place);
  }

  #take(tour: Tour, place?: number): Tour {
    this.rows.put(tour, place);
    this.#changed();
    return tour;
  }
}
