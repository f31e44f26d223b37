/** A value tried, and whether the order of the base holds there. */
export interface Tried {
  readonly value: number;
  readonly holds: boolean;
}

/** A flip lies between two values: the order holds at one and not at the other. */
export interface Bracket {
  readonly holds: number;
  readonly flips: number;
}

/** How closely a flip is looked for. */
export interface Grain {
  /** The two values of a bracket may lie so far apart in the end; 1 where only whole numbers make sense. */
  readonly tolerance: number;
  /** Only whole numbers are tried. */
  readonly whole: boolean;
}

/**
 * The first change of order on the way out.
 *
 * @param outward values tried on one side, the base or what is nearest to it first
 * @returns null where the order holds at all of them, or at none
 */
export function firstBracket(outward: readonly Tried[]): Bracket | null {
  const at = outward.findIndex(({ holds }) => !holds);
  return at < 1 ? null : { holds: outward[at - 1]!.value, flips: outward[at]!.value };
}

/** The value to try next, by bisection; null once the bracket is narrow enough. */
export function nextTry({ holds, flips }: Bracket, { tolerance, whole }: Grain): number | null {
  const apart = Math.abs(flips - holds);
  if (apart <= tolerance) return null;
  const middle = (holds + flips) / 2;
  return whole ? Math.floor(middle) : middle;
}

/** The bracket once a value inside it has been tried: the half nearer to the base that holds a flip. */
export function narrowed(bracket: Bracket, { value, holds }: Tried): Bracket {
  return holds ? { ...bracket, holds: value } : { ...bracket, flips: value };
}

/** How often a bracket is halved at most until it is narrow enough. */
export function halvingsOf({ holds, flips }: Bracket, { tolerance }: Grain): number {
  return Math.max(0, Math.ceil(Math.log2(Math.abs(flips - holds) / tolerance)));
}
