import type { Station } from '../../shared-types/climate.ts';
import type { KeptEstimate } from '../../shared-types/field-log.ts';
import type { Item } from '../../shared-types/item.ts';
import type { Settings } from '../../shared-types/settings.ts';
import type { Tour } from '../../shared-types/tour.ts';
import { drawComparedTour, type ComparedTour } from './compared-tour.ts';

/** What kits are judged on; plain data, so that it can pass to a worker. */
export interface ComparisonGround {
  /** Equal ids mean equal contents: a worker keeps the tours it drew under them. */
  readonly groundId: string;
  readonly tour: Tour;
  readonly items: readonly Item[];
  /** Which of their figures were stored from readings, and from how many. */
  readonly kept: readonly KeptEstimate[];
  readonly stations: readonly Station[];
  readonly settings: Settings;
  /** Multiplies the mean light of every day; 1 is as the stations and the rider say. */
  readonly sunScale: number;
}

/** The tours of grounds with their histories drawn; those drawn last are kept. */
export type DrawnTours = (ground: ComparisonGround) => ComparedTour;

/** Jobs of a few grounds come by turns; each drawn tour takes some megabytes. */
const toursKept = 4;

export function drawnTours(): DrawnTours {
  const kept = new Map<string, ComparedTour>();
  return (ground) => {
    const tour = kept.get(ground.groundId) ?? draw(ground);
    kept.delete(ground.groundId);
    kept.set(ground.groundId, tour);
    const [oldest] = kept.keys();
    if (kept.size > toursKept && oldest !== undefined) kept.delete(oldest);
    return tour;
  };
}

function draw({ tour, stations, items, settings, sunScale }: ComparisonGround): ComparedTour {
  const drawn = drawComparedTour(tour, stations, items, settings, sunScale);
  if ('unknownStationInLeg' in drawn)
    throw new Error(`Leg ${drawn.unknownStationInLeg + 1} names a climate station that is not in the list.`);
  return drawn;
}
