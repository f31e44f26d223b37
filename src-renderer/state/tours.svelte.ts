import type { Tour, TourDraft, TrackProfile } from '../../shared-types/tour.ts';
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

  /** Reads a track file into its grades; a file that is not one is told of and gives null. */
  async readTrack(name: string, text: string): Promise<TrackProfile | null> {
    const outcome = await this.calls.ask('tours.readTrack', { name, text });
    return outcome.ok ? outcome.value : null;
  }
}
