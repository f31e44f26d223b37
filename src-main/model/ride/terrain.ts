import type { GradeShare, TerrainClass } from '../../../shared-types/tour.ts';

/** What a stretch of road is like: how its distance is spread over grades, and how it rolls. */
export interface Terrain {
  readonly grades: readonly GradeShare[];
  readonly rollingCoefficient: number;
}

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

/** Mixed tyres on pavement: mean of 557 coast-down tests (Tengattini & Bigazzi). */
const pavedRolling = 0.0077;
/** Gravel and rough tracks (common practice, no source). */
const roughRolling = 0.015;

/**
 * Terrain classes: as much climb as descent, shares of the distance by grade. The shares are common practice, no source;
 * the climb they imply is stated beside each.
 */
export const terrainClasses: Readonly<Record<TerrainClass, Terrain>> = {
  // 1.5 m of climb per km
  'flat-paved': { grades: symmetric(0.7, [1, 0.3]), rollingCoefficient: pavedRolling },
  // 7 m per km
  rolling: { grades: symmetric(0.4, [1.5, 0.35], [3.5, 0.25]), rollingCoefficient: pavedRolling },
  // 14.5 m per km
  hilly: { grades: symmetric(0.25, [2, 0.35], [5, 0.3], [7, 0.1]), rollingCoefficient: pavedRolling },
  // 22.8 m per km
  mountain: { grades: symmetric(0.15, [3, 0.25], [6, 0.5], [8, 0.1]), rollingCoefficient: pavedRolling },
  // 11.3 m per km, on gravel
  'rough-track': {
    grades: symmetric(0.3, [2, 0.4], [4.5, 0.27], [8, 0.03]),
    rollingCoefficient: roughRolling,
  },
};
