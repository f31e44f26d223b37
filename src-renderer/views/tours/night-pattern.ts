import { longestNightPattern, nightKind, type Leg, type NightKind } from '../../../shared-types/tour.ts';

const kinds = nightKind.options;

/** What a press on a night turns it into. */
export function nextNight(night: NightKind): NightKind {
  return kinds[(kinds.indexOf(night) + 1) % kinds.length]!;
}

/** The pattern with one night turned. */
export function turned(pattern: readonly NightKind[], place: number): readonly NightKind[] {
  return pattern.map((night, i) => (i === place ? nextNight(night) : night));
}

/** The pattern cut, or drawn out with nights that have no wall; a length that is none leaves it as it is. */
export function resized(pattern: readonly NightKind[], length: number): readonly NightKind[] {
  if (!Number.isInteger(length) || length < 1 || length > longestNightPattern) return pattern;
  const added = Array.from({ length: Math.max(0, length - pattern.length) }, (): NightKind => 'none');
  return [...pattern.slice(0, length), ...added];
}

/** How many nights of the leg have a wall or a post, the pattern repeated to its last day. */
export function nightsWithOutlets({ days, nights }: Pick<Leg, 'days' | 'nights'>): number {
  const { pattern } = nights;
  let count = 0;
  for (let day = 0; day < days; day += 1) if (pattern[day % pattern.length] !== 'none') count += 1;
  return count;
}
