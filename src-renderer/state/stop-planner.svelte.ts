import type { Item } from '../../shared-types/item.ts';
import type { FieldError, Outcome } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { StopPlan, StopSituation } from '../../shared-types/stop-plan.ts';
import type { Leg, Tour } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import { withValueAt, type FormAccess, type FormStatus } from './form.svelte.ts';
import { StandingQuestion } from './standing-question.svelte.ts';
import { litOf, shareOf, situationOf, startingDraft, stopOnLeg, type StopDraft } from './stop-draft.ts';
import { piecesOf, type StopPiece } from './stop-pieces.ts';

/** What is stored now; every change of it asks anew. */
export interface StopPlannerSources {
  readonly tours: () => readonly Tour[];
  /** The tour that the other screens are about. */
  readonly tour: () => Tour | null;
  readonly scenarios: () => readonly Scenario[];
  readonly items: () => readonly Item[];
}

/** A stop at a wall as the rider describes it, and the plan for it. Nothing of it is stored. */
export class StopPlannerState extends StandingQuestion<StopSituation, StopPlan> implements FormAccess {
  readonly status: FormStatus = 'untouched';
  chosenTourId = $state.raw<string | null>(null);
  chosenScenarioId = $state.raw<string | null>(null);
  #draft = $state.raw<StopDraft | null>(null);
  #lastAsked: StopSituation | null = null;
  readonly #calls: Calls;
  readonly #sources: StopPlannerSources;

  constructor(calls: Calls, sources: StopPlannerSources) {
    super();
    this.#calls = calls;
    this.#sources = sources;
  }

  get tour(): Tour | null {
    const chosen = this.#sources.tours().find(({ id }) => id === this.chosenTourId);
    return chosen ?? this.#sources.tour();
  }

  get scenario(): Scenario | null {
    const scenarios = this.#sources.scenarios();
    return scenarios.find(({ id }) => id === this.chosenScenarioId) ?? scenarios[0] ?? null;
  }

  get pieces(): readonly StopPiece[] {
    const { tour, scenario } = this;
    return tour === null || scenario === null ? [] : piecesOf(tour, scenario, this.#sources.items());
  }

  /** Until the rider changes anything it follows the tour. */
  get draft(): StopDraft {
    const draft = this.#draft ?? startingDraft(this.tour?.legs[0]);
    const last = (this.tour?.legs.length ?? 1) - 1;
    return draft.leg > last ? { ...draft, leg: last } : draft;
  }

  get leg(): Leg | undefined {
    return this.tour?.legs[this.draft.leg];
  }

  get errors(): readonly FieldError[] {
    const asked = this.#asked();
    return asked === null || asked.ok ? [] : asked.error.fields;
  }

  chooseTour(id: string): void {
    this.chosenTourId = id;
    if (this.#draft !== null) this.#change(stopOnLeg(this.tour?.legs[0], 0));
  }

  chooseLeg(place: number): void {
    this.#change(stopOnLeg(this.tour?.legs[place], place));
  }

  /** Takes over a day stop of the leg. */
  chooseStop(stop: number): void {
    this.#change(stopOnLeg(this.leg, this.draft.leg, stop));
  }

  chooseUse(useAs: StopDraft['useAs']): void {
    this.#change({ useAs });
  }

  at(path: string): unknown {
    const { draft } = this;
    const [field, key] = path.split('.');
    const piece = this.pieces.find((each) => each.key === key);
    if (piece !== undefined && field === 'share') return shareOf(draft, piece);
    if (piece !== undefined && field === 'lit') return litOf(draft, piece);
    if (piece !== undefined && field === 'needWh') return draft.needWh[piece.key] ?? 0;
    return draft[path as keyof StopDraft];
  }

  set(path: string, value: unknown): void {
    this.place(path, value);
  }

  place(path: string, value: unknown): void {
    this.#draft = withValueAt(this.draft, path.split('.'), value) as StopDraft;
  }

  errorAt(path: string): string | null {
    return this.errors.find((error) => error.path === path)?.allowed ?? null;
  }

  isStored(): boolean {
    return false;
  }

  override follow(): void {
    // It stands in no question, yet the answer rests on it.
    this.#sources.items();
    super.follow();
  }

  /** While a field is in error the last plan stays. */
  protected override asking(): StopSituation | null {
    const asked = this.#asked();
    if (asked === null || asked.ok) this.#lastAsked = asked === null ? null : asked.value;
    return this.#lastAsked;
  }

  protected override ask(situation: StopSituation): Promise<Outcome<StopPlan>> {
    return this.#calls.attempt('stops.plan', situation);
  }

  #asked(): Outcome<StopSituation> | null {
    const { tour, scenario } = this;
    if (tour === null || scenario === null) return null;
    return situationOf(this.draft, this.pieces, { tourId: tour.id, scenarioId: scenario.id });
  }

  #change(change: Partial<StopDraft>): void {
    this.#draft = { ...this.draft, ...change };
  }
}
