import { mostScenariosCompared, type Scenario } from '../../shared-types/scenario.ts';
import type { Calls } from './calls.ts';
import type { EditHistory } from './edit-history.svelte.ts';
import { Form } from './form.svelte.ts';
import { RemovableRows } from './removable-rows.svelte.ts';

export class ScenariosState extends RemovableRows<Scenario> {
  /** Ids the rider took out of the comparison, until the window closes. */
  leftOut = $state.raw<readonly string[]>([]);
  readonly compared = $derived(
    this.rows.all.filter(({ id }) => !this.leftOut.includes(id)).slice(0, mostScenariosCompared),
  );

  constructor(calls: Calls, changed: () => void, history: EditHistory) {
    super(calls, changed, history, {
      list: 'scenarios',
      all: () => calls.ask('scenarios.list', {}),
      save: (how, scenario, id) => calls[how]('scenarios.save', { id, scenario }),
      remove: (how, id) => calls[how]('scenarios.remove', { id }),
      form: (draft, store) => new Form(draft, { root: 'scenario', live: true, store }),
    });
  }

  compare(id: string, wanted: boolean): void {
    const others = this.leftOut.filter((each) => each !== id);
    this.leftOut = wanted ? others : [...others, id];
    this.changed();
  }
}
