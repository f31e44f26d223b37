import type { Leg } from '../../../shared-types/tour.ts';
import type { FormAccess } from '../../state/form.svelte.ts';

/** A leg as it was before its terrain was changed. */
export interface LegBefore {
  readonly place: number;
  readonly label: string;
  readonly terrain: Leg['terrain'];
}

/** Puts a terrain back into its leg, wherever that was moved meanwhile; false when no leg goes by its name any more. */
export function putTerrainBack(form: FormAccess, { place, label, terrain }: LegBefore): boolean {
  const legs = form.at('legs') as readonly Leg[];
  const now = legs[place]?.label === label ? place : legs.findIndex((leg) => leg.label === label);
  if (now < 0) return false;
  form.set(`legs.${now}.terrain`, terrain);
  return true;
}
