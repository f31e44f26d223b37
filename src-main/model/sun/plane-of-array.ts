/** How the sky's diffuse light is shared out: all alike, or part of it round the sun. */
export type SkyModel = 'hay-davies' | 'isotropic';

/** Light on the horizontal plane and the sun that gives it. */
export interface SkyLight {
  readonly globalWm2: number;
  readonly diffuseWm2: number;
  /** Beam on a plane facing the sun. */
  readonly beamNormalWm2: number;
  /** Outside the atmosphere, facing the sun. */
  readonly extraterrestrialNormalWm2: number;
  readonly cosZenith: number;
}

/** A plane by the two cosines the sums need. */
export interface PlaneAngles {
  /** Cosine of the tilt from horizontal: 1 lies flat. */
  readonly cosTilt: number;
  /** Cosine of the angle between the sun and the plane's normal. */
  readonly cosIncidence: number;
}

/** cos 89 degrees: holds the beam ratio finite at the horizon (Hay & Davies 1980 as commonly implemented). */
const leastCosZenith = 0.01745;
/** Albedo of ordinary ground (common practice, no source). */
export const groundReflectance = 0.2;

/** Diffuse light of the sky on a tilted plane, W/m2 (Liu & Jordan 1963; Hay & Davies 1980). */
export function skyDiffuse(light: SkyLight, plane: PlaneAngles, model: SkyModel): number {
  const dome = (1 + plane.cosTilt) / 2;
  if (model === 'isotropic') return light.diffuseWm2 * dome;
  const anisotropy = light.beamNormalWm2 / light.extraterrestrialNormalWm2;
  const beamRatio = Math.max(0, plane.cosIncidence) / Math.max(leastCosZenith, light.cosZenith);
  return light.diffuseWm2 * (anisotropy * beamRatio + (1 - anisotropy) * dome);
}

/** Light the ground throws on a tilted plane, W/m2; none on one that lies flat. */
export function groundReflected(globalWm2: number, cosTilt: number, reflectance = groundReflectance): number {
  return (globalWm2 * reflectance * (1 - cosTilt)) / 2;
}

/** All light on a plane, W/m2: beam, sky and ground; 0 when the sun is down. */
export function planeIrradiance(
  light: SkyLight,
  plane: PlaneAngles,
  model: SkyModel = 'hay-davies',
  reflectance = groundReflectance,
): number {
  if (light.globalWm2 <= 0) return 0;
  const beam = light.beamNormalWm2 * Math.max(0, plane.cosIncidence);
  return (
    beam + skyDiffuse(light, plane, model) + groundReflected(light.globalWm2, plane.cosTilt, reflectance)
  );
}
