/** What a kit costs and weighs: known without a walk, and the sum over its items. */
export interface PlainFigures {
  /** To buy, minor units of the rider's currency. */
  readonly toBuyMinor: number;
  readonly grams: number;
  readonly frontWheelGrams: number;
}

/** An item of the search, of which a kit carries `least` to `most`. */
export interface KitOption {
  readonly least: number;
  readonly most: number;
  /** Of one. */
  readonly each: PlainFigures;
}

/** A kit: how many it carries of each option. */
export interface Kit extends PlainFigures {
  readonly counts: readonly number[];
}

/** How many kits the options make. */
export function kitCount(options: readonly Pick<KitOption, 'least' | 'most'>[]): number {
  return options.reduce((kits, { least, most }) => kits * (most - least + 1), 1);
}

/**
 * All kits that are allowed, in such an order that one which costs and weighs no more than another comes before it.
 *
 * @param allowed whether a kit is within the rider's limits
 */
export function kitsOf(options: readonly KitOption[], allowed: (kit: Kit) => boolean): readonly Kit[] {
  const kits = Array.from({ length: kitCount(options) }, (_, index) => kitAt(options, index));
  return kits.filter(allowed).sort(inOrder);
}

/** The kits are numbered like a clock whose wheels are the counts. */
function kitAt(options: readonly KitOption[], index: number): Kit {
  let rest = index;
  const counts = options.map(({ least, most }) => {
    const choices = most - least + 1;
    const count = least + (rest % choices);
    rest = Math.floor(rest / choices);
    return count;
  });
  const sum = (figure: keyof PlainFigures): number =>
    options.reduce((total, { each }, option) => total + counts[option]! * each[figure], 0);
  return {
    counts,
    toBuyMinor: sum('toBuyMinor'),
    grams: sum('grams'),
    frontWheelGrams: sum('frontWheelGrams'),
  };
}

function inOrder(a: Kit, b: Kit): number {
  const byFigures = a.toBuyMinor - b.toBuyMinor || a.grams - b.grams || a.frontWheelGrams - b.frontWheelGrams;
  return byFigures || compareCounts(a.counts, b.counts);
}

function compareCounts(a: readonly number[], b: readonly number[]): number {
  const differs = a.findIndex((count, option) => count !== b[option]);
  return differs < 0 ? 0 : a[differs]! - b[differs]!;
}
