import { dailyDiffuseShare } from './daily-diffuse.ts';
import type { SunCourse } from './sun-course.ts';
import { spreadUnder } from './within-day.ts';

/** The light of one day by step, W/m2: global and diffuse on a horizontal plane, beam facing the sun. */
export interface DaySky {
  readonly globalWm2: Float64Array;
  readonly diffuseWm2: Float64Array;
  readonly beamNormalWm2: Float64Array;
}

/** A sky to be filled, dark as yet. */
export function createSky(stepsPerDay: number): DaySky {
  const dark = (): Float64Array => new Float64Array(stepsPerDay);
  return { globalWm2: dark(), diffuseWm2: dark(), beamNormalWm2: dark() };
}

/**
 * Fills in the light of a day.
 *
 * The steps add up to the day's total exactly, and no step passes the cloudless sky. A day clearer than the cloudless one is
 * held at it. Beam beyond the cloudless beam, which the day's profile can ask for under a low sun, counts as diffuse.
 *
 * @param clearness of this day, global over extraterrestrial, 0..1
 * @param sky of as many steps as the course; overwritten
 */
export function fillSky(course: SunCourse, clearness: number, sky: DaySky): void {
  const held = Math.min(clearness, course.clearestClearness);
  const wholeWm2 = (held * course.extraterrestrialWhM2) / course.stepHours;
  spreadUnder(course.globalShare, course.clearGlobalWm2, wholeWm2, sky.globalWm2);
  const diffuseWm2 = wholeWm2 * dailyDiffuseShare(held, course.sunsetRad);
  for (let step = 0; step < sky.globalWm2.length; step += 1) {
    const global = sky.globalWm2[step]!;
    const cosZenith = course.cosZenith[step]!;
    const beamOnFlat = Math.max(0, global - course.diffuseShare[step]! * diffuseWm2);
    const beam = cosZenith > 0 ? Math.min(course.clearBeamWm2[step]!, beamOnFlat / cosZenith) : 0;
    sky.beamNormalWm2[step] = beam;
    sky.diffuseWm2[step] = Math.max(0, global - beam * cosZenith);
  }
}
