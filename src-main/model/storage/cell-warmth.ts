import type { Rules } from '../../../shared-types/scenario.ts';
import type { Activity } from './device.ts';

/** Where a store rides by day. */
export const rides = ['on-bicycle', 'on-rider'] as const;
export type RidesWhere = (typeof rides)[number];

/* How warm cells are kept, degC (common practice, no source). */
const roomDegC = 20;
export const besideBodyDegC = 20;
/** Air in a closed tent with a sleeper in it, above that outside, K (common practice, no source). */
export const tentWarmerK = 3;

/** Where cells are in a step, as far as their temperature goes. */
export interface CellPlace {
  readonly activity: Activity;
  /** In a room with a wall. */
  readonly indoors: boolean;
  /** In camp, before or after the day's ride. */
  readonly inCamp: boolean;
}

/**
 * Temperature of cells, degC: at rest they are as warm as what is around them.
 *
 * By day they are as warm as the air, and beside the body when they ride there. In camp they are where the rider keeps
 * them at night; in a room they are warm.
 */
export function cellDegC(
  airDegC: number,
  place: CellPlace,
  ridesWhere: RidesWhere,
  sleep: Rules['cellsSleep'],
): number {
  if (place.indoors) return Math.max(airDegC, roomDegC);
  if (!place.inCamp) return ridesWhere === 'on-rider' ? Math.max(airDegC, besideBodyDegC) : airDegC;
  if (sleep === 'outside') return airDegC;
  if (sleep === 'tent') return airDegC + tentWarmerK;
  return place.activity === 'night' ? Math.max(airDegC, besideBodyDegC) : airDegC + tentWarmerK;
}
