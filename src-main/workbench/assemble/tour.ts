import type { Station } from '../../../shared-types/climate.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import { daysBefore, type Leg, type Tour } from '../../../shared-types/tour.ts';
import { buildTimeline, type LegPlan, type Timeline } from '../../model/flow/timeline.ts';
import { lightStepsPerDay } from '../../model/flow/panel-power.ts';
import { aimedOverFlat } from '../../model/flow/panel-yield.ts';
import { tourSun, type PlaceClimate, type TourSun } from '../../model/flow/tour-sun.ts';
import { noonOf } from '../../model/sun/calendar.ts';
import { drawSkies, type Skies } from '../../model/sun/history/draw-skies.ts';
import type { Optics } from '../../model/sun/plane-of-array.ts';
import { legNotes } from './leg-notes.ts';
import { rideNotes } from './ride-notes.ts';
import { settlePlace, type SettledPlace } from './place.ts';
import { skyLawOf } from './sky.ts';

/** Everything about a tour that no scenario changes. */
export interface TourModel {
  readonly tour: Tour;
  readonly timeline: Timeline;
  readonly places: readonly SettledPlace[];
  readonly sun: TourSun;
  /** The drawn weather of the tour, the same for every scenario. */
  readonly skies: Skies;
  readonly optics: Optics;
  /** By leg: what to know before trusting its sun. */
  readonly notes: readonly (readonly string[])[];
}

/**
 * @param sunScale multiplies the mean light of every day
 * @returns the index of the first leg whose station is not known, or the tour made ready for the model
 */
export function assembleTour(
  tour: Tour,
  stations: readonly Station[],
  settings: Pick<Settings, 'stepMinutes' | 'sky'>,
  sunScale = 1,
): TourModel | { readonly unknownStationInLeg: number } {
  const places = tour.legs.map((leg) => settlePlace(leg.place, leg.radiation, stations));
  const unknown = places.indexOf(null);
  if (unknown >= 0) return { unknownStationInLeg: unknown };
  const settled = places.filter((place) => place !== null);
  const timeline = timelineOf(tour, Number(settings.stepMinutes));
  const days = Array.from(timeline.legOfDay, (leg, day) => ({
    climate: brighter(settled[leg]!.climate, sunScale),
    noonMs: noonOf(tour.startDate, day),
  }));
  const sun = tourSun(days, lightStepsPerDay(timeline.stepsPerDay));
  const { histories, seed } = settings.sky;
  const skies = drawSkies(sun.expected, skyLawOf(settings.sky), histories, seed);
  const optics = settings.sky;
  const notes = tour.legs.map((leg, index) => {
    const from = daysBefore(tour, index);
    const span = { from, to: from + leg.days };
    const ratio = aimedOverFlat(sun, skies, span, optics);
    return [...legNotes(leg, settled[index]!, sun, span, ratio), ...rideNotes(leg, settled[index]!)];
  });
  return { tour, timeline, places: settled, sun, skies, optics, notes };
}

function brighter(climate: PlaceClimate, sunScale: number): PlaceClimate {
  return { ...climate, clearness: climate.clearness.map((clearness) => clearness * sunScale) };
}

/** The tour as a row of steps. */
export function timelineOf({ legs }: Pick<Tour, 'legs'>, stepMinutes: number): Timeline {
  return buildTimeline(legs.map(legPlan), stepMinutes);
}

function legPlan(leg: Leg): LegPlan {
  return {
    days: leg.days,
    ridingHours: leg.ridingHours,
    stops: leg.dayStops.map((stop) => ({
      hours: stop.minutes / 60,
      outlets: stop.outlets,
      chance: stop.chance,
    })),
    nights: leg.nights,
  };
}
