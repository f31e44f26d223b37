import type { Expected, PanelSun } from '../../../shared-types/leg-sun.ts';
import { percentile } from '../percentile.ts';
import { createSky, fillSky } from '../sun/day-sky.ts';
import type { Skies } from '../sun/history/draw-skies.ts';
import { planeWm2, type Optics } from '../sun/plane-of-array.ts';
import { planeCourse } from '../sun/plane.ts';
import { addPanelPower, type LaidPanels } from './panel-power.ts';
import type { TourSun } from './tour-sun.ts';

/** What a panel gives on the days of a leg, Wh a day at its plug. */
type YieldSummary = Omit<PanelSun, 'itemId' | 'label' | 'periods'>;

const [low, middle, high] = [0.1, 0.5, 0.9] as const;
/** Days a dull week lasts. */
export const weekDays = 7;

/** Wh of each day, one array a panel; entry `history * days + day`. */
export function dailyYields(laid: LaidPanels, sun: TourSun, skies: Skies): readonly Float64Array[] {
  const yields = laid.panels.map(() => new Float64Array(skies.histories * skies.days));
  const powers = laid.panels.map(() => new Float64Array(sun.airDegC.length));
  const sky = createSky(sun.stepsPerDay);
  for (let history = 0; history < skies.histories; history += 1) {
    for (const power of powers) power.fill(0);
    addPanelPower(laid, sun, skies, history, powers, sky);
    powers.forEach((power, panel) =>
      sumDays(power, sun.stepsPerDay, yields[panel]!, history * skies.days, skies.days),
    );
  }
  return yields;
}

function sumDays(
  power: Float64Array,
  stepsPerDay: number,
  out: Float64Array,
  at: number,
  days: number,
): void {
  const stepHours = 24 / stepsPerDay;
  for (let day = 0; day < days; day += 1) {
    let watts = 0;
    for (let step = 0; step < stepsPerDay; step += 1) watts += power[day * stepsPerDay + step]!;
    out[at + day] = watts * stepHours;
  }
}

/** Mean and band of one day over the histories; entry `history * days + day`. */
export function spreadOfDay(values: Float64Array, days: number, day: number): Expected {
  const histories = values.length / days;
  const sorted = Float64Array.from({ length: histories }, (_, at) => values[at * days + day]!).sort();
  return {
    mean: sorted.reduce((sum, value) => sum + value, 0) / sorted.length,
    band: { p10: percentile(sorted, low), p90: percentile(sorted, high) },
  };
}

/**
 * Good, usual and dull days among the first `legDays`, and the dull week among all days.
 *
 * @param days at least a week
 */
export function summarise(yields: Float64Array, days: number, legDays: number): YieldSummary {
  const ofLeg = yields.filter((_, at) => at % days < legDays).sort();
  return {
    goodDayWh: percentile(ofLeg, high),
    usualDayWh: percentile(ofLeg, middle),
    dullDayWh: percentile(ofLeg, low),
    dullWeekWh: percentile(weekMeans(yields, days).sort(), low),
  };
}

/** Mean day of every run of seven days in every history. */
function weekMeans(yields: Float64Array, days: number): Float64Array {
  const weeks = days - weekDays + 1;
  const means = new Float64Array((yields.length / days) * weeks);
  for (let at = 0; at < means.length; at += 1) {
    const first = Math.floor(at / weeks) * days + (at % weeks);
    let sum = 0;
    for (let day = 0; day < weekDays; day += 1) sum += yields[first + day]!;
    means[at] = sum / weekDays;
  }
  return means;
}

/** Histories that settle a ratio of light to about a per cent. */
const ratioHistories = 20;

/** Light on an aimed plane over light on a flat one, over the given days; null when the sun stays down. */
export function aimedOverFlat(
  sun: TourSun,
  skies: Skies,
  days: { readonly from: number; readonly to: number },
  optics: Optics,
): number | null {
  const sky = createSky(sun.stepsPerDay);
  const light = { aimed: 0, flat: 0 };
  for (let day = days.from; day < days.to; day += 1) {
    const course = sun.courses[day]!;
    const planes = {
      aimed: planeCourse(course, { as: 'aimed' }),
      flat: planeCourse(course, { as: 'flat' }),
    };
    for (let history = 0; history < Math.min(ratioHistories, skies.histories); history += 1) {
      fillSky(course, skies.clearness[history * skies.days + day]!, sky);
      for (let step = course.lightFrom; step < course.lightTo; step += 1) {
        light.aimed += planeWm2(course, sky, planes.aimed, step, optics);
        light.flat += planeWm2(course, sky, planes.flat, step, optics);
      }
    }
  }
  return light.flat > 0 ? light.aimed / light.flat : null;
}
