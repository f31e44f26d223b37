import { labelWh, type Item } from '../../../shared-types/item.ts';
import {
  isRead,
  readingsOfKind,
  type ReadingDraft,
  type ReadingKind,
} from '../../../shared-types/reading.ts';
import type { StoreState } from '../../../shared-types/stop-plan.ts';

/** More lights than this nobody counts: they stand for a display in per cent. */
const mostLightsCounted = 20;

/** Lights that a rider counts on this item; 0 for none. */
export function countedLights(item: Item): number {
  return item.kind === 'bank' && item.lights <= mostLightsCounted ? item.lights : 0;
}

/** Items that readings can be about: in use, and with a battery where they are devices; owned ones first, then by label. */
export function readItems(items: readonly Item[]): readonly Item[] {
  const ownedFirst = (item: Item): number => (item.state === 'owned' ? 0 : 1);
  return items
    .filter((item) => isRead(item.kind) && item.state !== 'retired')
    .filter((item) => item.kind !== 'device' || labelWh(item.capacity) > 0)
    .toSorted((a, b) => ownedFirst(a) - ownedFirst(b) || a.label.localeCompare(b.label));
}

/** Which readings an item can have, the commonest first. */
export function kindsFor(item: Item): readonly ReadingKind[] {
  return isRead(item.kind) ? readingsOfKind[item.kind] : [];
}

/** Words for what is read, and what it is good for. */
export const kindWords: Readonly<Record<ReadingKind, string>> = {
  charge: 'How full it is now',
  delivery: 'What it gave through a meter',
  intake: 'What it took in through a meter',
  use: 'Use over some hours',
  sun: 'What it gave in full sun',
  ride: 'What it gave while riding',
};

const full: StoreState = { as: 'share', share: 1 };
const empty: StoreState = { as: 'share', share: 0 };

/** A reading to be typed: its date is today's, its figures are not made up; a drain mostly starts full, a charge empty. */
export function newReading(item: Item, as: ReadingKind, today: string): ReadingDraft {
  const common = { itemId: item.id, on: today, note: '' };
  const energy = { as: 'meter-wh', wh: Number.NaN } as const;
  const untold = untoldState(item);
  switch (as) {
    case 'charge':
      return { as, ...common, state: untold };
    case 'delivery':
      return { as, ...common, energy, before: full, after: untold };
    case 'intake':
      return { as, ...common, energy, before: empty, after: full };
    case 'use':
      return {
        as,
        ...common,
        beforeShare: Number.NaN,
        afterShare: Number.NaN,
        hours: Number.NaN,
        during: 'riding',
      };
    case 'sun':
      return { as, ...common, energy, hours: Number.NaN };
    case 'ride':
      return { as, ...common, energy, hours: Number.NaN, distanceKm: null };
  }
}

function untoldState(item: Item): StoreState {
  return countedLights(item) > 0 ? { as: 'lights', lit: Number.NaN } : { as: 'share', share: Number.NaN };
}

/** The draft for another item: as far as it can have the same reading, what was typed stays. */
export function forItem(draft: ReadingDraft, item: Item, today: string): ReadingDraft {
  const kinds = kindsFor(item);
  const [first] = kinds;
  if (first === undefined) return draft;
  if (!kinds.includes(draft.as)) return { ...newReading(item, first, today), on: draft.on, note: draft.note };
  const moved = { ...draft, itemId: item.id };
  return moved.as === 'charge' && moved.state.as === 'lights' && countedLights(item) === 0
    ? { ...moved, state: untoldState(item) }
    : moved;
}
