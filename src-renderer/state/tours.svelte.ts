import type { Tour } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import type { EditHistory } from './edit-history.svelte.ts';
import { Form } from './form.svelte.ts';
import { RemovableRows } from './removable-rows.svelte.ts';

export class ToursState extends RemovableRows<Tour> {
  constructor(calls: Calls, changed: () => void, history: EditHistory) {
    super(calls, changed, history, {
      list: 'tours',
      all: () => calls.ask('tours.list', {}),
      save: (how, tour, id) => calls[how]('tours.save', { id, tour }),
      remove: (how, id) => calls[how]('tours.remove', { id }),
      form: (draft, store) => new Form(draft, { root: 'tour', live: true, store }),
    });
  }
}
