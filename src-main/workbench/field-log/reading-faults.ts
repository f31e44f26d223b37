import { itemKindNames, labelWh, type Item } from '../../../shared-types/item.ts';
import { failure, type FieldError, type Outcome } from '../../../shared-types/outcome.ts';
import {
  isRead,
  meanKmh,
  readingsOfKind,
  type ReadingDraft,
  type ReadingKind,
} from '../../../shared-types/reading.ts';
import type { StoreState } from '../../../shared-types/stop-plan.ts';
import { fallBetween } from '../../model/field-log/cells.ts';
import { decimal } from '../assemble/words.ts';
import { fullnessOf } from './fullness.ts';

/** What the schema can't see: what day it is, and what the item is like. Null when nothing is wrong. */
export function readingFaults(draft: ReadingDraft, item: Item, today: string): Outcome<never> | null {
  const faults = [...dateFaults(draft, today), ...itemFaults(draft, item)];
  const [first] = faults;
  if (first === undefined) return null;
  return failure('bad-input', `${first.path}: allowed is ${first.allowed}; given was ${first.got}.`, faults);
}

function dateFaults({ on }: ReadingDraft, today: string): readonly FieldError[] {
  return on <= today ? [] : [{ path: 'reading.on', allowed: `a date up to today, ${today}`, got: on }];
}

const kindWords: Readonly<Record<ReadingKind, string>> = {
  charge: 'how full it is',
  delivery: 'what it delivered through a meter',
  intake: 'what it took in through a meter',
  use: 'its use over some hours',
  sun: 'what it gave in the sun',
  ride: 'what it gave while riding',
};

function itemFaults(draft: ReadingDraft, item: Item): readonly FieldError[] {
  const allowed: readonly ReadingKind[] = isRead(item.kind) ? readingsOfKind[item.kind] : [];
  if (!allowed.includes(draft.as)) return [kindFault(draft, item, allowed)];
  if (item.kind === 'device' && labelWh(item.capacity) === 0)
    return [{ path: 'reading.itemId', allowed: 'a device with a battery of its own', got: item.label }];
  const faults = statesOf(draft).flatMap(([path, state]) => lightFaults(`reading.${path}`, state, item));
  return faults.length > 0 ? faults : orderFaults(draft, item);
}

function kindFault({ as }: ReadingDraft, item: Item, allowed: readonly ReadingKind[]): FieldError {
  const kind = itemKindNames[item.kind].one.toLowerCase();
  if (allowed.length === 0)
    return { path: 'reading.itemId', allowed: 'a bank, device, panel or generator hub', got: item.label };
  const words = allowed.map((each) => kindWords[each]).join(', ');
  return { path: 'reading.as', allowed: `of a ${kind}: ${words}`, got: kindWords[as] };
}

type NamedState = readonly [path: string, state: StoreState];

function statesOf(draft: ReadingDraft): readonly NamedState[] {
  if (draft.as === 'charge') return [['state', draft.state]];
  if (draft.as === 'delivery' || draft.as === 'intake')
    return [
      ['before', draft.before],
      ['after', draft.after],
    ];
  return [];
}

function lightFaults(path: string, state: StoreState, item: Item): readonly FieldError[] {
  if (state.as === 'share') return [];
  const lights = lightsOf(item);
  const got = `${state.lit} lights lit`;
  if (lights === 0) return [{ path: `${path}.lit`, allowed: `per cent: ${item.label} has no lights`, got }];
  return state.lit <= lights
    ? []
    : [{ path: `${path}.lit`, allowed: `0 to ${lights}, the lights of ${item.label}`, got }];
}

export function lightsOf(item: Item): number {
  return item.kind === 'bank' ? item.lights : 0;
}

/** With luggage nobody holds more over hours (common practice, no source): above it distance or hours are a slip. */
const fastestMeanKmh = 60;

function rideFaults(draft: Extract<ReadingDraft, { as: 'ride' }>): readonly FieldError[] {
  const speedKmh = meanKmh(draft);
  if (speedKmh === null || speedKmh <= fastestMeanKmh) return [];
  const mostKm = decimal(fastestMeanKmh * draft.hours, 1);
  const allowed = `at most ${mostKm} km in ${decimal(draft.hours, 2)} h, a mean of ${fastestMeanKmh} km/h`;
  return [{ path: 'reading.distanceKm', allowed, got: `a mean of ${decimal(speedKmh)} km/h` }];
}

function orderFaults(draft: ReadingDraft, item: Item): readonly FieldError[] {
  if (draft.as === 'ride') return rideFaults(draft);
  if (draft.as === 'use')
    return draft.afterShare < draft.beforeShare
      ? []
      : [{ path: 'reading.afterShare', allowed: 'less than before', got: 'as much or more' }];
  if (draft.as !== 'delivery' && draft.as !== 'intake') return [];
  const [first, then] = [draft.before, draft.after].map((state) => fullnessOf(state, lightsOf(item)));
  const fall = draft.as === 'delivery' ? fallBetween(first!, then!) : fallBetween(then!, first!);
  if (fall.high > 0) return [];
  const path = `reading.after.${draft.after.as === 'share' ? 'share' : 'lit'}`;
  const allowed = draft.as === 'delivery' ? 'less than before it delivered' : 'more than before it took in';
  return [{ path, allowed, got: draft.as === 'delivery' ? 'more, or as much' : 'less, or as much' }];
}
