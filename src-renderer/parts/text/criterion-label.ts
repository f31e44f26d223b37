import { criteria, type Criterion } from '../../../shared-types/settings.ts';
import { display } from '../../state/display.svelte.ts';

/** What a criterion is called: grams are no word for ounces. */
export function criterionLabel(name: Criterion): string {
  return name === 'grams' && display.isImperial ? 'Mass carried' : criteria[name].label;
}
