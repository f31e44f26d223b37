import type { DaySky } from '../../src-main/model/sun/day-sky.ts';
import { planeWm2, skyDiffuseWm2, type Optics } from '../../src-main/model/sun/plane-of-array.ts';
import type { PlaneCourse } from '../../src-main/model/sun/plane.ts';

/** The light of one hour as publications print it, W/m2. */
export interface HourOfLight {
  readonly globalWm2: number;
  readonly diffuseWm2: number;
  readonly beamNormalWm2: number;
  /** Facing the sun outside the atmosphere. */
  readonly normalWm2: number;
  readonly cosZenith: number;
}

/** A plane in that hour; `cosIncidence` negative when the sun is behind it. */
export interface PlaneInHour {
  readonly cosTilt: number;
  readonly cosIncidence: number;
}

const one = (value: number): Float64Array => Float64Array.of(value);

function dayOfOneStep(
  light: HourOfLight,
  plane: PlaneInHour,
): {
  readonly sun: { readonly cosZenith: Float64Array; readonly normalWm2: number };
  readonly sky: DaySky;
  readonly course: PlaneCourse;
} {
  return {
    sun: { cosZenith: one(light.cosZenith), normalWm2: light.normalWm2 },
    sky: {
      globalWm2: one(light.globalWm2),
      diffuseWm2: one(light.diffuseWm2),
      beamNormalWm2: one(light.beamNormalWm2),
    },
    course: { cosTilt: one(plane.cosTilt), cosIncidence: one(Math.max(0, plane.cosIncidence)) },
  };
}

/** All light on a plane in one hour, W/m2. */
export function hourOnPlaneWm2(light: HourOfLight, plane: PlaneInHour, optics: Optics): number {
  const { sun, sky, course } = dayOfOneStep(light, plane);
  return planeWm2(sun, sky, course, 0, optics);
}

/** The sky's diffuse light on a plane in one hour, W/m2. */
export function hourOfSkyWm2(light: HourOfLight, plane: PlaneInHour, model: Optics['diffuse']): number {
  const { sun, sky, course } = dayOfOneStep(light, plane);
  return skyDiffuseWm2(sun, sky, course, 0, model);
}
