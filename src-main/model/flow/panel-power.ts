import { fillSky, type DaySky } from '../sun/day-sky.ts';
import type { Skies } from '../sun/history/draw-skies.ts';
import { plugPowerW, type PanelModel } from '../sun/panel.ts';
import { planeWm2, type Optics } from '../sun/plane-of-array.ts';
import { planeCourse, type PlaneCourse } from '../sun/plane.ts';
import type { PanelPlacement, PanelSchedule } from './panel-schedule.ts';
import type { TourSun } from './tour-sun.ts';

/** One way the panels lie in the course of a day. */
interface LaidPlace {
  /** By day: the plane under the day's sun, and the share of each step spent there. */
  readonly planes: readonly PlaneCourse[];
  readonly timeShares: readonly Float64Array[];
  /** Share of the light that shade leaves, 0..1. */
  readonly lightShare: number;
}

/** Panels laid out over a tour. */
export interface LaidPanels {
  readonly panels: readonly PanelModel[];
  readonly places: readonly LaidPlace[];
  readonly optics: Optics;
}

/**
 * Lays panels out.
 *
 * @param schedules by leg
 * @param legOfDay index into `schedules`, by day of the sun
 */
export function layPanels(
  panels: readonly PanelModel[],
  placement: PanelPlacement,
  sun: TourSun,
  schedules: readonly PanelSchedule[],
  legOfDay: ArrayLike<number>,
  optics: Optics,
): LaidPanels {
  const planeOf = { riding: placement.whileRiding, atStops: placement.atStops, inCamp: placement.inCamp };
  const places = (['riding', 'atStops', 'inCamp'] as const).flatMap((place): LaidPlace[] => {
    const plane = planeOf[place];
    if (plane === null) return [];
    return [
      {
        planes: sun.courses.map((course) => planeCourse(course, plane)),
        timeShares: sun.courses.map((_, day) => schedules[legOfDay[day]!]![place]),
        lightShare: place === 'riding' ? placement.rackFactor : 1,
      },
    ];
  });
  return { panels, places, optics };
}

/**
 * Adds the power at the plugs in each step of a history, W, to `outputs`, one array a panel. Allocates nothing.
 *
 * @param history which of the skies
 * @param sky scratch for one day
 */
export function addPanelPower(
  laid: LaidPanels,
  sun: TourSun,
  skies: Skies,
  history: number,
  outputs: readonly Float64Array[],
  sky: DaySky,
): void {
  for (let day = 0; day < skies.days; day += 1) {
    fillSky(sun.courses[day]!, skies.clearness[history * skies.days + day]!, sky);
    for (let place = 0; place < laid.places.length; place += 1)
      addDay(laid, laid.places[place]!, sun, day, sky, outputs);
  }
}

function addDay(
  { panels, optics }: LaidPanels,
  place: LaidPlace,
  sun: TourSun,
  day: number,
  sky: DaySky,
  outputs: readonly Float64Array[],
): void {
  const course = sun.courses[day]!;
  const plane = place.planes[day]!;
  const timeShare = place.timeShares[day]!;
  for (let step = course.lightFrom; step < course.lightTo; step += 1) {
    const time = timeShare[step]!;
    if (time === 0) continue;
    const lightWm2 = planeWm2(course, sky, plane, step, optics) * place.lightShare;
    const at = day * sun.stepsPerDay + step;
    for (let panel = 0; panel < panels.length; panel += 1)
      outputs[panel]![at]! += time * plugPowerW(lightWm2, sun.airDegC[at]!, panels[panel]!);
  }
}

/** Longest step in which light is reckoned, min: in an hour the sun, and the stop a panel is aimed at, move too far. */
const longestLightStepMin = 15;
const minutesPerDay = 1440;

/** Steps a day in which light is reckoned, where energy is reckoned in the given ones: as many, or a multiple. */
export function lightStepsPerDay(stepsPerDay: number): number {
  const stepMin = minutesPerDay / stepsPerDay;
  return stepsPerDay * Math.ceil(stepMin / longestLightStepMin);
}
