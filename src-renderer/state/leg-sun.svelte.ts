import type { CallInput } from '../../shared-types/contract.ts';
import type { Item } from '../../shared-types/item.ts';
import type { LegSun, Lying, SunBy } from '../../shared-types/leg-sun.ts';
import { success, type Outcome } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { SkySettings } from '../../shared-types/settings.ts';
import type { Leg, Tour } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import { firstDateOf, startingBy, startingLying, stillThere } from './leg-sun-start.ts';
import { StandingQuestion } from './standing-question.svelte.ts';

export type LegSunQuestion = CallInput<'tours.legSun'>;

interface AskedSun {
  readonly question: LegSunQuestion;
  /** The leg as it was stored then, and the day it begins. */
  readonly leg: Leg;
  readonly firstDate: string;
}

export interface ShownSun extends AskedSun {
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

/** The sun of one leg of a stored tour. */
export class LegSunState extends StandingQuestion<AskedSun, ShownSun> {
  chosenLying = $state.raw<Lying | null>(null);
  chosenBy = $state.raw<SunBy | null>(null);
  readonly #calls: Calls;
  readonly #sources: LegSunSources;

  constructor(calls: Calls, sources: LegSunSources) {
    super();
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

  override follow(): void {
    const { items, scenarios, sky } = this.#sources;
    // These stand in no question, yet its answer rests on them.
    for (const ground of [items, scenarios, sky]) ground();
    super.follow();
  }

  protected override asking(): AskedSun | null {
    const tour = this.#sources.tour();
    const { leg, lying, by } = this;
    if (tour === undefined || leg === undefined) return null;
    const place = this.#sources.place();
    const question = { tourId: tour.id, leg: place, lying, by };
    return { question, leg, firstDate: firstDateOf(tour, place) };
  }

  protected override async ask(asking: AskedSun): Promise<Outcome<ShownSun>> {
    const outcome = await this.#calls.ask('tours.legSun', asking.question);
    return outcome.ok ? success({ ...asking, sun: outcome.value }) : outcome;
  }
}
