import type { OnTour, OnTourQuestion } from '../../shared-types/field-log.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Tour } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import type { FieldLogState } from './field-log.svelte.ts';
import { StandingQuestion } from './standing-question.svelte.ts';

/** What is stored now; every change of it asks anew. */
export interface OnTourSources {
  readonly log: Pick<FieldLogState, 'hasToday'>;
  readonly readings: () => unknown;
  readonly tour: () => Tour | null;
  readonly scenarios: () => readonly Scenario[];
  readonly items: () => unknown;
}

/** How long what is stored now lasts, by today's readings. */
export class OnTourState extends StandingQuestion<OnTourQuestion, OnTour> {
  chosenScenarioId = $state.raw<string | null>(null);
  /** Day of the tour as the rider says; null to go by the date. */
  day = $state.raw<number | null>(null);
  readonly #calls: Calls;
  readonly #sources: OnTourSources;

  constructor(calls: Calls, sources: OnTourSources) {
    super();
    this.#calls = calls;
    this.#sources = sources;
  }

  get scenario(): Scenario | null {
    const scenarios = this.#sources.scenarios();
    return scenarios.find(({ id }) => id === this.chosenScenarioId) ?? scenarios[0] ?? null;
  }

  override follow(): void {
    // They stand in no question, yet the answer rests on them.
    this.#sources.items();
    this.#sources.readings();
    super.follow();
  }

  protected override asking(): OnTourQuestion | null {
    const { scenario, day } = this;
    const tour = this.#sources.tour();
    if (tour === null || scenario === null || !this.#sources.log.hasToday) return null;
    return { tourId: tour.id, scenarioId: scenario.id, day };
  }

  protected override ask(question: OnTourQuestion): Promise<Outcome<OnTour>> {
    return this.#calls.attempt('readings.onTour', question);
  }
}
