import type { SkySettings } from '../../shared-types/settings.ts';

/** The sky in the row of settings. */
export interface SkyColumns {
  readonly sky_method: SkySettings['method'];
  readonly sky_persistence: number;
  readonly sky_histories: number;
  readonly sky_seed: number;
  readonly sky_diffuse: SkySettings['diffuse'];
  readonly ground_reflectance: number;
}

export function skyColumns(sky: SkySettings): SkyColumns {
  return {
    sky_method: sky.method,
    sky_persistence: sky.persistence,
    sky_histories: sky.histories,
    sky_seed: sky.seed,
    sky_diffuse: sky.diffuse,
    ground_reflectance: sky.groundReflectance,
  };
}

export function skyOf(row: SkyColumns): SkySettings {
  return {
    method: row.sky_method,
    persistence: row.sky_persistence,
    histories: row.sky_histories,
    seed: row.sky_seed,
    diffuse: row.sky_diffuse,
    groundReflectance: row.ground_reflectance,
  };
}
