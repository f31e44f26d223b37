import { randomUUID } from 'node:crypto';
import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import { listItems } from '../catalogue/items.ts';
import type { OpenedCatalogue } from '../catalogue/open.ts';
import { listKeptEstimates } from '../catalogue/reading-estimates.ts';
import { readStations } from '../catalogue/stations.ts';
import { findTour } from '../catalogue/tours.ts';
import { assembleTour, type TourModel } from './assemble/tour.ts';
import type { ComparisonGround } from './ground.ts';
import { longestSunshineH } from './longest-sunshine.ts';
import { settingsOf } from './settings-of.ts';

/** A tour of the catalogue with all that kits are judged on. */
export interface PreparedGround {
  readonly model: TourModel;
  readonly ground: ComparisonGround;
}

/** Reads what kits are judged on from the catalogue at once. */
export function prepareGround({ read }: OpenedCatalogue, tourId: string): Outcome<PreparedGround> {
  const tour = findTour(read, tourId);
  if (tour === null) return failure('not-found', 'That tour is not in the catalogue (any more).');
  const [settings, stations] = [settingsOf(read), readStations(longestSunshineH)];
  const model = assembleTour(tour, stations, settings);
  if ('unknownStationInLeg' in model)
    return failure(
      'not-found',
      `Leg ${model.unknownStationInLeg + 1} names a climate station that is not in the list.`,
    );
  const [items, kept] = [listItems(read), listKeptEstimates(read)];
  return success({
    model,
    ground: { groundId: randomUUID(), tour, items, kept, stations, settings, sunScale: 1 },
  });
}
