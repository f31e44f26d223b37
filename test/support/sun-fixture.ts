import { allDayIn } from '../../src-main/workbench/assemble/sky.ts';
import { layPanels } from '../../src-main/model/flow/panel-power.ts';
import {
  panelSchedule,
  type PanelDay,
  type PanelPlacement,
} from '../../src-main/model/flow/panel-schedule.ts';
import { tourSun, type PlaceClimate, type TourSun } from '../../src-main/model/flow/tour-sun.ts';
import { noonOf } from '../../src-main/model/sun/calendar.ts';
import { drawSkies, type Skies } from '../../src-main/model/sun/history/draw-skies.ts';
import type { PanelModel } from '../../src-main/model/sun/panel.ts';
import type { Optics } from '../../src-main/model/sun/plane-of-array.ts';

export const usualOptics: Optics = { diffuse: 'hay-davies', groundReflectance: 0.2 };

/** A 20 W folding panel of usual kind (common practice, no source). */
export const panel20: PanelModel = {
  ratedW: 20,
  temperatureCoefficientPerK: -0.004,
  noctDegC: 45,
  regulatorEfficiency: 0.85,
  startWm2: 80,
  outputW: 15,
};

export function climateAt(latDeg: number, clearness = 0.5, elevationM = 0): PlaceClimate {
  const months = (value: number): number[] => new Array<number>(12).fill(value);
  return { latDeg, elevationM, clearness: months(clearness), minDegC: months(8), maxDegC: months(20) };
}

/** Days in a row at one place. */
export function sunAt(climate: PlaceClimate, startDate: string, days: number, stepsPerDay = 48): TourSun {
  const row = Array.from({ length: days }, (_, day) => ({ climate, noonMs: noonOf(startDate, day) }));
  return tourSun(row, stepsPerDay);
}

export function skiesOf(sun: TourSun, histories = 30, seed = 1): Skies {
  return drawSkies(sun.expected, { method: 'distribution', persistence: 0.29 }, histories, seed);
}

/** A sky that is the same on every day. */
export function evenSkies(sun: TourSun, clearness: number): Skies {
  const days = sun.courses.length;
  return { days, histories: 1, clearness: new Float64Array(days).fill(clearness) };
}

const restDay: PanelDay = { ridingHours: 0, stops: [] };

export function laidOn(
  sun: TourSun,
  panels: readonly PanelModel[],
  placement: PanelPlacement = allDayIn({ as: 'flat' }),
  day: PanelDay = restDay,
  optics: Optics = usualOptics,
) {
  const schedule = panelSchedule(day, placement, sun.stepsPerDay);
  return layPanels(panels, placement, sun, [schedule], new Uint16Array(sun.courses.length), optics);
}
