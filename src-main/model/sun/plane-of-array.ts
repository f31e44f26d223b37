import type { SkySettings } from '../../../shared-types/settings.ts';
import type { DaySky } from './day-sky.ts';
import type { PlaneCourse } from './plane.ts';
import type { SunCourse } from './sun-course.ts';

/** How the light of the sky is shared out, part of it round the sun or all alike, and what the ground throws back. */
export type Optics = Pick<SkySettings, 'diffuse' | 'groundReflectance'>;

/** What of a day's course the sums need. */
type SunAbove = Pick<SunCourse, 'cosZenith' | 'normalWm2'>;

/** cos 89 degrees: holds the beam ratio finite at the horizon (Hay & Davies 1980 as commonly implemented). */
const leastCosZenith = 0.01745;

/** Diffuse light of the sky on a tilted plane, W/m2 (Liu & Jordan 1963; Hay & Davies 1980). */
export function skyDiffuseWm2(
  sun: SunAbove,
  sky: DaySky,
  plane: PlaneCourse,
  step: number,
  model: Optics['diffuse'],
): number {
  const dome = (1 + plane.cosTilt[step]!) / 2;
  const diffuse = sky.diffuseWm2[step]!;
  if (model === 'isotropic') return diffuse * dome;
  const anisotropy = sky.beamNormalWm2[step]! / sun.normalWm2;
  const beamRatio = plane.cosIncidence[step]! / Math.max(leastCosZenith, sun.cosZenith[step]!);
  return diffuse * (anisotropy * beamRatio + (1 - anisotropy) * dome);
}

/** Light the ground throws on a tilted plane, W/m2 (Liu & Jordan 1963); none on one that lies flat. */
export function groundReflectedWm2(globalWm2: number, cosTilt: number, reflectance: number): number {
  return (globalWm2 * reflectance * (1 - cosTilt)) / 2;
}

/**
 * All light on a plane in one step, W/m2: beam, sky and ground; 0 when the sun is down. At the horizon the light round the
 * sun is divided by a small cosine; no plane is given more than there is outside the atmosphere.
 */
export function planeWm2(
  sun: SunAbove,
  sky: DaySky,
  plane: PlaneCourse,
  step: number,
  optics: Optics,
): number {
  const global = sky.globalWm2[step]!;
  if (global <= 0) return 0;
  const beam = sky.beamNormalWm2[step]! * plane.cosIncidence[step]!;
  const diffuse = skyDiffuseWm2(sun, sky, plane, step, optics.diffuse);
  const ground = groundReflectedWm2(global, plane.cosTilt[step]!, optics.groundReflectance);
  return Math.min(sun.normalWm2, beam + diffuse + ground);
}
