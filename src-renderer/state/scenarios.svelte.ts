import type { Outcome } from '../../shared-types/outcome.ts';
import { mostScenariosCompared, type Scenario, type ScenarioDraft } from '../../shared-types/scenario.ts';
import type { Calls } from './calls.ts';
import { Rows } from './rows.svelte.ts';
import { Turns } from './turns.ts';

export class ScenariosState {
  readonly rows = new Rows<Scenario>();
  /** Ids the rider took out of the comparison, until the window closes. */
  leftOut = $state.raw<readonly string[]>([]);
  readonly compared = $derived(
    this.rows.all.filter(({ id }) => !this.leftOut.includes(id)).slice(0, mostScenariosCompared),
  );
  readonly #calls: Calls;
  readonly #changed: () => void;
  readonly #turns = new Turns();

  constructor(calls: Calls, changed: () => void) {
    this.#calls = calls;
    this.#changed = changed;
  }

  async load(): Promise<void> {
    const outcome = await this.#calls.ask('scenarios.list', {});
    if (outcome.ok) this.rows.fill(outcome.value);
  }

  async add(scenario: ScenarioDraft): Promise<Scenario | null> {
    const outcome = await this.#calls.ask('scenarios.save', { scenario });
    return outcome.ok ? this.#take(outcome.value) : null;
  }

  async save(id: string, scenario: ScenarioDraft): Promise<Outcome<Scenario>> {
    const turn = this.#turns.take(id);
    const outcome = await this.#calls.submit('scenarios.save', { id, scenario });
    if (outcome.ok && turn.settle()) this.#take(outcome.value);
    return outcome;
  }

  async remove(id: string): Promise<void> {
    const outcome = await this.#calls.ask('scenarios.remove', { id });
    if (!outcome.ok) return;
    const place = this.rows.drop(id);
    this.#changed();
    this.#calls.notices.tell(
      `Removed ${outcome.value.label}.`,
      () => void this.#putBack(outcome.value, place),
    );
  }

  compare(id: string, wanted: boolean): void {
    const others = this.leftOut.filter((each) => each !== id);
    this.leftOut = wanted ? others : [...others, id];
    this.#changed();
  }

  async #putBack({ id, ...scenario }: Scenario, place: number): Promise<void> {
    const outcome = await this.#calls.ask('scenarios.save', { id, scenario });
    if (outcome.ok) this.#take(outcome.value, place);
  }

  #take(scenario: Scenario, place?: number): Scenario {
    this.rows.put(scenario, place);
    this.#changed();
    return scenario;
  }
}
