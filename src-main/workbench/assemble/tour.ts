import type { Station } from '../../../shared-types/climate.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import type { Leg, Tour } from '../../../shared-types/tour.ts';
import { buildTimeline, type LegPlan, type Timeline } from '../../model/flow/timeline.ts';
import { lightStepsPerDay } from '../../model/flow/panel-power.ts';
import { aimedOverFlat } from '../../model/flow/panel-yield.ts';
import { tourSun, type TourSun } from '../../model/flow/tour-sun.ts';
import { airDensityKgM3 } from '../../model/ride/air-density.ts';
import { chainEfficiency, uprightDragAreaM2, type RideModel } from '../../model/ride/power-balance.ts';
import { terrainClasses, type Terrain } from '../../model/ride/terrain.ts';
import { noonOf } from '../../model/sun/calendar.ts';
import { drawSkies, type Skies } from '../../model/sun/history/draw-skies.ts';
import type { Optics } from '../../model/sun/plane-of-array.ts';
import { legNotes, type LegDays } from './leg-notes.ts';
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

/** @returns the index of the first leg whose station is not known, or the tour made ready for the model */
export function assembleTour(
  tour: Tour,
  stations: readonly Station[],
  settings: Pick<Settings, 'stepMinutes' | 'sky'>,
): TourModel | { readonly unknownStationInLeg: number } {
  const places = tour.legs.map((leg) => settlePlace(leg.place, leg.radiation, stations));
  const unknown = places.indexOf(null);
  if (unknown >= 0) return { unknownStationInLeg: unknown };
  const settled = places.filter((place) => place !== null);
  const timeline = buildTimeline(tour.legs.map(legPlan), Number(settings.stepMinutes));
  const days = Array.from(timeline.legOfDay, (leg, day) => ({
    climate: settled[leg]!.climate,
    noonMs: noonOf(tour.startDate, day),
  }));
  const sun = tourSun(days, lightStepsPerDay(timeline.stepsPerDay));
  const { histories, seed } = settings.sky;
  const skies = drawSkies(sun.expected, skyLawOf(settings.sky), histories, seed);
  const optics = settings.sky;
  const notes = legSpans(tour).map((span, leg) =>
    legNotes(tour.legs[leg]!, settled[leg]!, sun, span, aimedOverFlat(sun, skies, span, optics)),
  );
  return { tour, timeline, places: settled, sun, skies, optics, notes };
}

/** First day of each leg and the day after its last, counted from 0. */
function legSpans(tour: Tour): readonly LegDays[] {
  let from = 0;
  return tour.legs.map(({ days }) => {
    const span = { from, to: from + days };
    from = span.to;
    return span;
  });
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
    airDensityKgM3: airDensityKgM3(place.climate.elevationM, place.meanDegC),
    drivetrainEfficiency: chainEfficiency,
  };
}
