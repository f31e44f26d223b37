import { untrack } from 'svelte';
import type { CallInput } from '../../shared-types/contract.ts';
import type { Item } from '../../shared-types/item.ts';
import type { LegSun, Lying, SunBy } from '../../shared-types/leg-sun.ts';
import type { CallError } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { SkySettings } from '../../shared-types/settings.ts';
import type { Leg, Tour } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import { Delay } from './delay.ts';
import { firstDateOf, startingBy, startingLying, stillThere } from './leg-sun-start.ts';
import { Turns } from './turns.ts';

/** Saves that follow each other closely cost one question. */
const burstMs = 120;

export type LegSunQuestion = CallInput<'tours.legSun'>;

/** An answer with what it was asked about: the choosers may have moved on since. */
export interface ShownSun {
  readonly question: LegSunQuestion;
  /** The leg as it was stored then, and the day it begins. */
  readonly leg: Leg;
  readonly firstDate: string;
  readonly sun: LegSun;
}

/** What is stored now; every change of it asks anew. */
export interface LegSunSources {
  readonly tour: () => Tour | undefined;
  readonly place: () => number;
  readonly items: () => readonly Item[];
  readonly scenarios: () => readonly Scenario[];
  readonly sky: () => SkySettings | undefined;
}

/** The sun of one leg of a stored tour; an old answer stays readable while a new one is made. */
export class LegSunState {
  shown = $state.raw<ShownSun | null>(null);
  failure = $state.raw<CallError | null>(null);
  updating = $state(false);
  chosenLying = $state.raw<Lying | null>(null);
  chosenBy = $state.raw<SunBy | null>(null);
  readonly #calls: Calls;
  readonly #sources: LegSunSources;
  readonly #burst = new Delay(burstMs);
  readonly #turns = new Turns();

  constructor(calls: Calls, sources: LegSunSources) {
    this.#calls = calls;
    this.#sources = sources;
  }

  /** The leg as stored; undefined for one just added. */
  get leg(): Leg | undefined {
    return this.#sources.tour()?.legs[this.#sources.place()];
  }

  get lying(): Lying {
    const scenarios = this.#sources.scenarios();
    const chosen = this.chosenLying;
    if (chosen !== null && stillThere(chosen, scenarios)) return chosen;
    return startingLying(scenarios, this.#sources.items());
  }

  get by(): SunBy {
    return this.chosenBy ?? startingBy(this.leg?.days ?? 1);
  }

  /** Asks anew whenever what is stored or chosen changes; for an effect, which tracks what is read here. */
  follow(): void {
    const { items, scenarios, sky } = this.#sources;
    // These stand in no question, yet its answer rests on them.
    for (const ground of [items, scenarios, sky]) ground();
    const asked = this.#asking() !== null;
    untrack(() => this.#request(asked));
  }

  async run(): Promise<void> {
    const turn = this.#turns.take();
    const asking = this.#asking();
    this.updating = asking !== null;
    if (asking === null) {
      this.shown = null;
      this.failure = null;
      return;
    }
    const outcome = await this.#calls.ask('tours.legSun', asking.question);
    if (!turn.isNewest()) return;
    this.updating = false;
    this.failure = outcome.ok ? null : outcome.error;
    if (outcome.ok) this.shown = { ...asking, sun: outcome.value };
  }

  #request(asked: boolean): void {
    this.updating = asked;
    this.#burst.run(() => void this.run());
  }

  #asking(): Omit<ShownSun, 'sun'> | null {
    const tour = this.#sources.tour();
    const { leg, lying, by } = this;
    if (tour === undefined || leg === undefined) return null;
    const place = this.#sources.place();
    const question = { tourId: tour.id, leg: place, lying, by };
    return { question, leg, firstDate: firstDateOf(tour, place) };
  }
}
