import type { Station } from '../../../shared-types/climate.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Leg, Tour } from '../../../shared-types/tour.ts';
import { settlePlace, type SettledPlace } from './place.ts';

/** A leg of a tour and where it lies; says so when there is no such leg or its station is not in the list. */
export function settleLeg(
  tour: Tour,
  legIndex: number,
  stations: readonly Station[],
): Outcome<{ readonly leg: Leg; readonly place: SettledPlace }> {
  const leg = tour.legs[legIndex];
  if (leg === undefined) return failure('not-found', `The tour has no leg ${legIndex + 1} (any more).`);
  const place = settlePlace(leg.place, leg.radiation, stations);
  return place === null
    ? failure('not-found', `Leg ${legIndex + 1} names a climate station that is not in the list.`)
    : success({ leg, place });
}
