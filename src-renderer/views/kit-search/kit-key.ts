import type { FoundKit } from '../../../shared-types/kit-search.ts';

/** Tells kits apart by what they hold: two items may share label and figures, and both kits stay. */
export function kitKey({ items }: Pick<FoundKit, 'items'>): string {
  return items.map(({ itemId, quantity }) => `${quantity} ${itemId}`).join();
}
