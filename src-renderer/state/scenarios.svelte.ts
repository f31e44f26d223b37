import { mostScenariosCompared, type Scenario, type ScenarioDraft } from '../../shared-types/scenario.ts';
import type { Calls } from './calls.ts';
import { RemovableRows } from './removable-rows.svelte.ts';

export class ScenariosState extends RemovableRows<Scenario, ScenarioDraft> {
  /** Ids the rider took out of the comparison, until the window closes. */
  leftOut = $state.raw<readonly string[]>([]);
  readonly compared = $derived(
    this.rows.all.filter(({ id }) => !this.leftOut.includes(id)).slice(0, mostScenariosCompared),
  );

  constructor(calls: Calls, changed: () => void) {
    super(calls, changed, {
      list: () => calls.ask('scenarios.list', {}),
      save: (how, scenario, id) => calls[how]('scenarios.save', { id, scenario }),
      remove: (id) => calls.ask('scenarios.remove', { id }),
    });
  }

  compare(id: string, wanted: boolean): void {
    const others = this.leftOut.filter((each) => each !== id);
    this.leftOut = wanted ? others : [...others, id];
    this.changed();
  }
}
