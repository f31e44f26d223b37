import type { TerrainClass } from '../../../shared-types/tour.ts';
import type { GradeShare } from '../../../shared-types/track.ts';

/** A share of the distance on one ground, by what it adds to the rolling resistance on pavement. */
export interface Surface {
  readonly addedRolling: number;
  readonly share: number;
}

/** What a stretch of country is like: how its distance is spread over grades and, apart from these, over surfaces. */
export interface Terrain {
  readonly grades: readonly GradeShare[];
  readonly surfaces: readonly Surface[];
}

/** As much climb as descent: each slope's share is halved between up and down. */
const symmetric = (
  flat: number,
  ...slopes: readonly (readonly [gradePct: number, share: number])[]
): GradeShare[] => [
  { gradePct: 0, share: flat },
  ...slopes.flatMap(([gradePct, share]) => [
    { gradePct, share: share / 2 },
    { gradePct: -gradePct, share: share / 2 },
  ]),
];

/** Roughness adds to rolling resistance: smooth gravel, and broken or sandy ground (common practice, no source). */
const gravelAdds = 0.005;
const roughAdds = 0.012;

const ground = (paved: number, gravel: number, rough: number): readonly Surface[] =>
  [
    { addedRolling: 0, share: paved },
    { addedRolling: gravelAdds, share: gravel },
    { addedRolling: roughAdds, share: rough },
  ].filter(({ share }) => share > 0);

/**
 * Terrain classes: shares of the distance by grade and by surface. The shares are common practice, no source; the climb they
 * imply is stated beside each.
 */
export const terrainClasses: Readonly<Record<TerrainClass, Terrain>> = {
  // 1.5 m of climb per km
  'flat-paved': { grades: symmetric(0.7, [1, 0.3]), surfaces: ground(1, 0, 0) },
  // 7 m per km
  rolling: { grades: symmetric(0.4, [1.5, 0.35], [3.5, 0.25]), surfaces: ground(1, 0, 0) },
  // 14.5 m per km
  hilly: { grades: symmetric(0.25, [2, 0.35], [5, 0.3], [7, 0.1]), surfaces: ground(0.95, 0.05, 0) },
  // 22.8 m per km
  mountain: { grades: symmetric(0.15, [3, 0.25], [6, 0.5], [8, 0.1]), surfaces: ground(0.9, 0.1, 0) },
  // 11.3 m per km
  'rough-track': {
    grades: symmetric(0.3, [2, 0.4], [4.5, 0.27], [8, 0.03]),
    surfaces: ground(0, 0.6, 0.4),
  },
};
