import type { Flip } from '../../../shared-types/swings.ts';
import {
  firstBracket,
  halvingsOf,
  narrowed,
  nextTry,
  type Bracket,
  type Grain,
} from '../../model/judge/flip-search.ts';
import type { AssumptionRange, Span } from './assumption-range.ts';
import type { SwingPoint } from './swing-figures.ts';

/** The way from the plan to one end of an assumption, on which a flip is looked for. */
export interface SideSearch {
  readonly range: AssumptionRange;
  readonly side: Exclude<Flip['side'], 'at'>;
  readonly grain: Grain;
  /** Values tried at first, the plan or what is most like it first. */
  readonly outward: readonly number[];
}

/** A search that has held a flip in. */
export interface FlipSearch {
  readonly search: SideSearch;
  readonly bracket: Bracket;
}

/** A flip is found to so much of the whole range (our choice). */
const flipTolerance = 1 / 50;

/** Both ways out of the plan. */
export function sidesOf(range: AssumptionRange, span: Span, pieces: number): readonly SideSearch[] {
  const { low, high, whole } = span;
  const grain = { tolerance: whole ? 1 : (high - low) * flipTolerance, whole };
  const side = (name: SideSearch['side'], end: number): SideSearch => ({
    range,
    side: name,
    grain,
    outward: outwardTo(end, span, pieces),
  });
  return [side('below', low), side('above', high)];
}

function outwardTo(end: number, { start, whole }: Span, pieces: number): readonly number[] {
  const values = Array.from({ length: pieces + 1 }, (_, piece) =>
    piece === pieces ? end : start + ((end - start) * piece) / pieces,
  );
  return [...new Set(whole ? values.map(Math.round) : values)];
}

/** The search with its flip held in; null where the order holds all the way, or not even at its start. */
export function heldIn(search: SideSearch, holds: (point: SwingPoint) => boolean): FlipSearch | null {
  const { range, outward } = search;
  const bracket = firstBracket(outward.map((value) => ({ value, holds: holds({ range, value }) })));
  return bracket === null ? null : { search, bracket };
}

/** What to try next; null once the flip is known well enough. */
export function triedNext({ search: { range, grain }, bracket }: FlipSearch): SwingPoint | null {
  const value = nextTry(bracket, grain);
  return value === null ? null : { range, value };
}

export function afterTry(flip: FlipSearch, value: number, holds: boolean): FlipSearch {
  return { ...flip, bracket: narrowed(flip.bracket, { value, holds }) };
}

/** How many more values are tried at most, one after the other. */
export function roundsLeft(flips: readonly FlipSearch[]): number {
  return Math.max(0, ...flips.map(({ bracket, search }) => halvingsOf(bracket, search.grain)));
}
