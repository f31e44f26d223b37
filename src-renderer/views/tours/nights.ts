import {
  mostNights,
  nightKind,
  nightOf,
  type Leg,
  type NightKind,
  type Nights,
} from '../../../shared-types/tour.ts';

type Kinds = readonly NightKind[];

const kindsInTurn = nightKind.options;

/** What a press on a night turns it into. */
export function nextNight(night: NightKind): NightKind {
  return kindsInTurn[(kindsInTurn.indexOf(night) + 1) % kindsInTurn.length]!;
}

/** The kinds with one night turned; a list that ends before it is first filled up to it. */
export function turned(kinds: Kinds, place: number): Kinds {
  const filled = place < kinds.length ? kinds : resized(kinds, place + 1);
  return filled.map((night, i) => (i === place ? nextNight(night) : night));
}

/** The kinds cut, or drawn out with nights that have no wall; a length that is none leaves them as they are. */
export function resized(kinds: Kinds, length: number): Kinds {
  if (!Number.isInteger(length) || length < 1 || length > mostNights) return kinds;
  const added = Array.from({ length: Math.max(0, length - kinds.length) }, (): NightKind => 'none');
  return [...kinds.slice(0, length), ...added];
}

/** The nights of a leg one by one, to its last day; none while its days are no number the contract takes. */
function nightByNight(nights: Nights, days: number): Kinds {
  if (!Number.isInteger(days) || days < 1 || days > mostNights) return [];
  return Array.from({ length: days }, (_, night) => nightOf(nights, night));
}

/** The nights that the form shows: those of the pattern, or each night of the leg. */
export function nightsShown(nights: Nights, days: number): Kinds {
  return nights.by === 'pattern' ? nights.kinds : nightByNight(nights, days);
}

/** The kinds to start from when the nights are given the other way: a list begins as the pattern it takes over from. */
export function kindsFor(by: Nights['by'], nights: Nights, days: number): Kinds {
  const spelledOut = by === 'list' ? nightByNight(nights, days) : [];
  return spelledOut.length === 0 ? nights.kinds : spelledOut;
}

/** How many nights of the leg have a wall or a post. */
export function nightsWithOutlets({ days, nights }: Pick<Leg, 'days' | 'nights'>): number {
  return nightByNight(nights, days).filter((night) => night !== 'none').length;
}
