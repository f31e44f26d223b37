import type { CallInput } from '../../shared-types/contract.ts';
import type { Item } from '../../shared-types/item.ts';
import type { LegRide } from '../../shared-types/leg-ride.ts';
import { success, type Outcome } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Leg, Tour } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import { StandingQuestion } from './standing-question.svelte.ts';

export type LegRideQuestion = CallInput<'tours.legRide'>;

export interface ShownRide {
  readonly question: LegRideQuestion;
  readonly ride: LegRide;
}

/** What is stored now; every change of it asks anew. */
export interface LegRideSources {
  readonly tour: () => Tour | undefined;
  readonly place: () => number;
  readonly items: () => readonly Item[];
  readonly scenarios: () => readonly Scenario[];
}

/** How one leg of a stored tour is ridden with the kit of a scenario. */
export class LegRideState extends StandingQuestion<LegRideQuestion, ShownRide> {
  chosenId = $state.raw<string | null>(null);
  readonly #calls: Calls;
  readonly #sources: LegRideSources;

  constructor(calls: Calls, sources: LegRideSources) {
    super();
    this.#calls = calls;
    this.#sources = sources;
  }

  /** The leg as stored; undefined for one just added. */
  get leg(): Leg | undefined {
    return this.#sources.tour()?.legs[this.#sources.place()];
  }

  /** The chosen scenario while it is there, else the first with a generator hub, else the first. */
  get scenario(): Scenario | undefined {
    const scenarios = this.#sources.scenarios();
    const chosen = scenarios.find(({ id }) => id === this.chosenId);
    return chosen ?? firstWithHub(scenarios, this.#sources.items()) ?? scenarios[0];
  }

  override follow(): void {
    // They stand in no question, yet its answer rests on them.
    this.#sources.items();
    super.follow();
  }

  protected override asking(): LegRideQuestion | null {
    const tour = this.#sources.tour();
    const { leg, scenario } = this;
    if (tour === undefined || scenario === undefined) return null;
    if (leg === undefined || leg.ridingHours === 0) return null;
    return { tourId: tour.id, leg: this.#sources.place(), scenarioId: scenario.id };
  }

  protected override async ask(question: LegRideQuestion): Promise<Outcome<ShownRide>> {
    const outcome = await this.#calls.ask('tours.legRide', question);
    return outcome.ok ? success({ question, ride: outcome.value }) : outcome;
  }
}

function firstWithHub(scenarios: readonly Scenario[], items: readonly Item[]): Scenario | undefined {
  const hubs = new Set(items.filter(({ kind }) => kind === 'generator-hub').map(({ id }) => id));
  return scenarios.find(({ kit }) => kit.some(({ itemId }) => hubs.has(itemId)));
}
