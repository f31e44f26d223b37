import { shareOfLights, type StoreState } from '../../../shared-types/stop-plan.ts';
import { fullnessOfShare, type Fullness } from '../../model/field-log/cells.ts';

/** How full a store was, between two shares; lights are those of the item. */
export function fullnessOf(state: StoreState, lights: number): Fullness {
  return state.as === 'share' ? fullnessOfShare(state.share) : shareOfLights(state.lit, lights);
}
