import type { Tour, TourDraft } from '../../shared-types/tour.ts';
import type { Calls } from './calls.ts';
import { RemovableRows } from './removable-rows.svelte.ts';

export class ToursState extends RemovableRows<Tour, TourDraft> {
  constructor(calls: Calls, changed: () => void) {
    super(calls, changed, {
      list: () => calls.ask('tours.list', {}),
      save: (how, tour, id) => calls[how]('tours.save', { id, tour }),
      remove: (id) => calls.ask('tours.remove', { id }),
    });
  }
}
