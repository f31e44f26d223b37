import type { Station } from '../../../shared-types/climate.ts';
import type { Leg, Tour } from '../../../shared-types/tour.ts';
import { buildTimeline, type LegPlan, type Timeline } from '../../model/flow/timeline.ts';
import { meanHistory, type History } from '../../model/flow/history.ts';
import { airDensityKgM3 } from '../../model/ride/air-density.ts';
import { chainEfficiency, uprightDragAreaM2, type RideModel } from '../../model/ride/power-balance.ts';
import { terrainClasses, type Terrain } from '../../model/ride/terrain.ts';
import { monthOf, noonOf } from '../../model/sun/calendar.ts';
import { monthlyDiffuseShare } from '../../model/sun/daily-radiation.ts';
import { lightOfDay, type DayLight } from '../../model/sun/day-light.ts';
import { settlePlace, type SettledPlace } from './place.ts';

/** Everything about a tour that no scenario changes. */
export interface TourModel {
  readonly tour: Tour;
  readonly timeline: Timeline;
  readonly places: readonly SettledPlace[];
  readonly history: History;
  /** By day. */
  readonly light: readonly DayLight[];
}

/** @returns the index of the first leg whose station is not known, or the tour made ready for the model */
export function assembleTour(
  tour: Tour,
  stations: readonly Station[],
  stepMinutes: number,
): TourModel | { readonly unknownStationInLeg: number } {
  const places = tour.legs.map((leg) => settlePlace(leg.place, stations));
  const unknown = places.indexOf(null);
  if (unknown >= 0) return { unknownStationInLeg: unknown };
  const settled = places.filter((place) => place !== null);
  const timeline = buildTimeline(tour.legs.map(legPlan), stepMinutes);
  const placeOf = (day: number): SettledPlace => settled[timeline.legOfDay[day]!]!;
  const history = meanHistory(
    timeline,
    (day) => placeOf(day).climate.clearness[monthOf(noonOf(tour.startDate, day))]!,
  );
  const light = Array.from({ length: timeline.days }, (_, day) =>
    lightOfDay(
      placeOf(day).climate,
      noonOf(tour.startDate, day),
      history.clearness[day]!,
      monthlyDiffuseShare,
      timeline.stepsPerDay,
    ),
  );
  return { tour, timeline, places: settled, history, light };
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
    nightPattern: leg.nights.pattern,
    wallOutlets: leg.nights.wallOutlets,
    postOutlets: leg.nights.postOutlets,
  };
}

/** The terrain of a leg: a track's own grades on the rolling resistance of its class, or the class alone. */
export function terrainOf(leg: Leg): Terrain {
  const { rollingCoefficient, grades } = terrainClasses[leg.terrain.terrainClass];
  return { rollingCoefficient, grades: leg.terrain.as === 'track' ? leg.terrain.track.grades : grades };
}

/** Rider, bicycle, luggage and kit on the road of a leg. */
export function rideModel(tour: Tour, leg: Leg, place: SettledPlace, kitG: number): RideModel {
  return {
    massKg: tour.riderMassKg + tour.bicycleMassKg + kitG / 1000,
    dragAreaM2: uprightDragAreaM2,
    rollingCoefficient: terrainOf(leg).rollingCoefficient,
    airDensityKgM3: airDensityKgM3(place.elevationM, place.meanDegC),
    drivetrainEfficiency: chainEfficiency,
  };
}
