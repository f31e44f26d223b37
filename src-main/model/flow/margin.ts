/** Largest factor tried: a margin is capped at "more than +300 %". */
export const largestUseFactor = 4;
/** The factor is found to a quarter of a per cent of planned use. */
const factorTolerance = 0.0025;

/** Whether a history carries the use of the plan times a factor with no must-have flat. */
export type Carries = (history: number, factor: number) => boolean;

export interface MarginResult {
  /** Largest factor carried, less 1; -1 when no use at all is carried. */
  readonly value: number;
  readonly capped: boolean;
  /** The least factor known not to be carried; infinite when capped. */
  readonly refused: number;
}

/** What is known while the factor is looked for: carried in enough histories at `carried`, in too few at `refused`. */
interface Hunt {
  readonly carries: Carries;
  readonly allowed: number;
  carried: number;
  refused: number;
  /** Histories that fail at `carried`, and so above it. */
  failed: number;
  /** Histories whose own factor may lie between the two. */
  open: readonly number[];
}

/**
 * The energy margin: the largest factor by which all use can grow so that no must-have runs flat in at least `confidence` of
 * the histories, less 1. It is the factor of one of them: so many carry less as are allowed to fail.
 *
 * Found by bracketing on common histories. More use is never easier to carry, so a history that carries a factor need not
 * be walked again below it, nor one that fails above it.
 *
 * @param carries is asked for the plan, factor 1, first
 * @param histories at least one
 * @param confidence 0..1
 */
export function energyMargin(
  carries: Carries,
  histories: readonly number[],
  confidence: number,
): MarginResult {
  const hunt = startHunt(carries, histories, confidence);
  const { value } = roughMargin(carries, histories, confidence);
  holdIn(hunt, value + 1 + roughTolerance / 2);
  return settle(hunt, factorTolerance);
}

/** A rough look takes so many of the histories, and is content with so much. */
const roughSample = 25;
const roughTolerance = 0.06;

/** An estimate of the energy margin from some of the histories, evenly taken. */
export function roughMargin(
  carries: Carries,
  histories: readonly number[],
  confidence: number,
): MarginResult {
  const stride = Math.max(1, Math.floor(histories.length / roughSample));
  const sample = histories.filter((_, at) => at % stride === 0);
  const hunt = startHunt(carries, sample, confidence);
  test(hunt, largestUseFactor);
  return settle(hunt, roughTolerance);
}

function startHunt(carries: Carries, histories: readonly number[], confidence: number): Hunt {
  const allowed = allowedFailures(histories.length, confidence);
  const hunt: Hunt = { carries, allowed, carried: 0, refused: Infinity, failed: 0, open: histories };
  test(hunt, 1);
  return hunt;
}

/** How many of some histories may fail. */
export function allowedFailures(histories: number, confidence: number): number {
  const rounding = 1e-9;
  return Math.min(histories - 1, Math.floor(histories * (1 - confidence) + rounding));
}

/** How far from a guess the factor is looked for, at first, as a share of it; the reach doubles until it is held in. */
const firstReach = 0.03;

/** Widens the reach round a guess until the factor lies within it. The upper end goes first: it settles most histories. */
function holdIn(hunt: Hunt, guess: number): void {
  for (let reach = firstReach; hunt.refused === Infinity; reach *= 2) {
    const above = Math.min(largestUseFactor, guess * (1 + reach));
    test(hunt, above);
    if (above === largestUseFactor) break;
  }
  const known = hunt.carried;
  for (let reach = firstReach; hunt.carried === known && reach < 1; reach *= 2)
    test(hunt, guess * (1 - reach));
}

/** Halves what lies between until it is small enough. */
function settle(hunt: Hunt, tolerance: number): MarginResult {
  if (hunt.carried === largestUseFactor)
    return { value: largestUseFactor - 1, capped: true, refused: Infinity };
  while (hunt.refused - hunt.carried > tolerance) test(hunt, (hunt.carried + hunt.refused) / 2);
  return { value: hunt.carried - 1, capped: false, refused: hunt.refused };
}

/** Tries a factor between the two, and drops the histories it settles. */
function test(hunt: Hunt, factor: number): void {
  if (factor <= hunt.carried || factor >= hunt.refused) return;
  const fails = hunt.open.filter((history) => !hunt.carries(history, factor));
  if (hunt.failed + fails.length > hunt.allowed) {
    hunt.refused = factor;
    hunt.open = fails;
    return;
  }
  const failing = new Set(fails);
  hunt.carried = factor;
  hunt.failed += fails.length;
  hunt.open = hunt.open.filter((history) => !failing.has(history));
}
