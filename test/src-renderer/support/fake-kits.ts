import type { Handlers } from '../../../shared-types/contract.ts';
import type { FoundKit, KitSearchResult } from '../../../shared-types/kit-search.ts';
import { success } from '../../../shared-types/outcome.ts';

export function foundKit(changes: Partial<FoundKit> = {}): FoundKit {
  return {
    items: [
      { itemId: 'bank', label: '20 Ah bank', quantity: 1, owned: true },
      { itemId: 'panel', label: '20 W panel', quantity: 1, owned: false },
    ],
    method: 'panel',
    toBuy: { minor: 8400, currency: 'EUR' },
    grams: 910,
    frontWheelGrams: 42,
    margin: { value: 0.3, capped: false },
    ...changes,
  };
}

/** A finished search of four kits with two that no other beats. */
export function searchResult(changes: Partial<KitSearchResult> = {}): KitSearchResult {
  const alone = { itemId: 'bank', label: '20 Ah bank', quantity: 1, owned: true };
  const bankOnly = foundKit({
    ...{ items: [alone], method: 'banks', grams: 350, frontWheelGrams: 16 },
    ...{ toBuy: { minor: 0, currency: 'EUR' }, margin: { value: -0.35, capped: false } },
  });
  return {
    kits: [foundKit(), bankOnly],
    tally: { kits: 4, walked: 2, idleItem: 1, tooLittleSupply: 1, stoppedEarly: 0 },
    ...{ complete: true, seconds: 0.4, confidence: 0.9, histories: 200, otherMoney: [] },
    ...changes,
  };
}

export function fakeKits(): Pick<Handlers, 'kits.search' | 'kits.soFar'> {
  return {
    'kits.search': () => success(searchResult()),
    'kits.soFar': () => success({ result: searchResult({ complete: false }) }),
  };
}
