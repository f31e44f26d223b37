import type { Tour, TourDraft } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import { Form } from './form.svelte.ts';
import { KeptForms } from './kept-forms.ts';
import { RemovableRows } from './removable-rows.svelte.ts';

export class ToursState extends RemovableRows<Tour, TourDraft> {
  readonly forms = new KeptForms<Tour>((id, tour) => {
    return new Form(tour, { root: 'tour', live: true, store: (draft) => this.save(id, draft) });
  });

  constructor(calls: Calls, changed: () => void) {
    super(calls, changed, {
      list: () => calls.ask('tours.list', {}),
      save: (how, tour, id) => calls[how]('tours.save', { id, tour }),
      remove: (id) => calls.ask('tours.remove', { id }),
    });
  }
}
