import type { Comparison } from '../../shared-types/comparison.ts';
import type { Item } from '../../shared-types/item.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Settings } from '../../shared-types/settings.ts';
import type { Swings } from '../../shared-types/swings.ts';
import type { Tour } from '../../shared-types/tour.ts';

/** What a comparison was made from, as it is stored. */
export interface SheetInputs {
  readonly tour: Tour;
  readonly scenarios: readonly Scenario[];
  /** Those that some scenario carries or that come along on the tour. */
  readonly items: readonly Item[];
  readonly settings: Settings;
}

/** What is printed on a sheet besides its figures, so that two sheets can be told apart. */
export interface SheetStamp {
  /** ISO 8601 date, `2027-04-18`. */
  readonly madeOn: string;
  readonly version: string;
}

/** All that a sheet is written from. */
export interface SheetMatter {
  readonly comparison: Comparison;
  /** Or why there is nothing to say of it. */
  readonly swings: Swings | { readonly why: string };
  readonly inputs: SheetInputs;
  readonly stamp: SheetStamp;
}

export const program = 'Chargewright';
export const reserveReminder = 'Estimates, not guarantees: carry a reserve.';

export function sheetTitle({ tour }: Pick<Comparison, 'tour'>): string {
  return `Comparison sheet: ${tour.label}`;
}

export function hasSwings(swings: SheetMatter['swings']): swings is Swings {
  return 'swings' in swings;
}
