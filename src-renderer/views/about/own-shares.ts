import { fieldMeta, type FieldMeta } from '../../../shared-types/field.ts';
import { percent } from '../../../shared-types/figures.ts';
import {
  balancedShare,
  frontLoad as schema,
  loadPlaces,
  type FrontLoad,
  type LoadPlace,
} from '../../../shared-types/front-load.ts';
import { inPercent } from '../../parts/fields/words.ts';

/** The field of a share that the rider may know better, in per cent. */
export interface OwnShare {
  readonly place: LoadPlace;
  readonly meta: FieldMeta;
}

/** The rider's own shares, each with what the moment balance gives where it is left empty. */
export function ownShares({ wheelbaseM, ahead }: FrontLoad): readonly OwnShare[] {
  return loadPlaces.map((place) => {
    const meta = fieldMeta(schema.shape.ownShare.shape[place]) ?? { label: place };
    return { place, meta: { ...inPercent(meta), hint: balanceText(ahead[place], wheelbaseM) } };
  });
}

function balanceText(aheadM: number, wheelbaseM: number): string {
  const share = balancedShare(aheadM, wheelbaseM);
  return Number.isFinite(share)
    ? `By balance: ${percent(share)}.`
    : 'By balance, once the distances are given.';
}
