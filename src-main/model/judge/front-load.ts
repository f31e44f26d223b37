import { balancedShare, type FrontLoad, type LoadPlace } from '../../../shared-types/front-load.ts';
import type { Mount } from '../../../shared-types/item-common.ts';

/** Part of a load at each mount that the front wheel carries; below 0 behind the rear axle. */
export type FrontShares = Readonly<Record<Mount, number>>;

/**
 * The share of each mount: the rider's own where given, else by the balance of moments. What is in the wheel counts whole.
 * Positions that a rider has not changed are common practice, no source (`usualFrontLoad`).
 */
export function frontShares({ wheelbaseM, ahead, ownShare }: FrontLoad): FrontShares {
  const shareAt = (place: LoadPlace): number => ownShare[place] ?? balancedShare(ahead[place], wheelbaseM);
  return {
    'front-wheel': 1,
    fork: shareAt('fork'),
    handlebar: shareAt('handlebar'),
    frame: shareAt('frame'),
    'rear-rack': shareAt('rearRack'),
    body: shareAt('body'),
  };
}
