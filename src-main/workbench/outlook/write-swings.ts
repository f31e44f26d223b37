import type { ScoredRow } from '../../../shared-types/comparison.ts';
import type { Flip, Swing, SwingEnd, Swings } from '../../../shared-types/swings.ts';
import { becauseOf, holdsFirst, leaderOf, leadPoints } from '../../model/judge/first-place.ts';
import { swingOf, widestFirst } from '../../model/judge/swings.ts';
import type { AssumptionRange, Span } from './assumption-range.ts';
import { planPoint, rowsAt, type SwingPoint, type WalkedFigures } from './swing-figures.ts';
import type { FlipSearch } from './swing-search.ts';
import type { SwingSubject } from './swing-subject.ts';

/** The scorecard at the plan, and at every point walked. */
interface Seen {
  readonly subject: SwingSubject;
  readonly plan: readonly ScoredRow[];
  readonly at: (point: SwingPoint) => readonly ScoredRow[];
  readonly firstId: string;
  readonly secondId: string;
  readonly level: boolean;
}

/** Puts what was found into the words of the contract, widest swing first. */
export function writeSwings(
  subject: SwingSubject,
  walked: WalkedFigures,
  flips: readonly FlipSearch[],
): Swings {
  const { ground, scenarios } = subject.inputs;
  const at = (point: SwingPoint): readonly ScoredRow[] => rowsAt(subject, walked, point);
  const plan = at(planPoint);
  const [firstId, secondId] = plan.map(({ id }) => id) as [string, string];
  const level = plan.filter(({ rank }) => rank === 1).length > 1;
  const seen: Seen = { subject, plan, at, firstId, secondId, level };
  const swings = subject.ranges.map((range) => writeSwing(seen, range, flips));
  return {
    tourId: ground.tour.id,
    scenarios: scenarios.map(({ id, label, method }) => ({ id, label, method })),
    firstId,
    secondId,
    leadPoints: leadPoints(plan, firstId, secondId),
    level,
    swings: widestFirst(swings, ({ widthPoints }) => widthPoints),
    leftOut: subject.leftOut.map(({ name, absent }) => ({ name, why: absent })),
    histories: ground.settings.sky.histories,
  };
}

function writeSwing(seen: Seen, range: AssumptionRange, flips: readonly FlipSearch[]): Swing {
  const span = range.span(seen.subject.inputs);
  const [low, high] = [endAt(seen, range, span.low), endAt(seen, range, span.high)];
  const base = leadPoints(seen.plan, seen.firstId, seen.secondId);
  const { width, changesSign } = swingOf({ base, low: low.leadPoints, high: high.leadPoints });
  const { id, name, scale, source } = range;
  return {
    ...{ id, name, scale, source, base: span.base, low, high, changesSign },
    widthPoints: width,
    flips: seen.level ? [] : flipsOf(seen, range, span, flips),
  };
}

function endAt({ at, firstId, secondId }: Seen, range: AssumptionRange, value: number): SwingEnd {
  const rows = at({ range, value });
  return {
    value,
    leadPoints: leadPoints(rows, firstId, secondId),
    // Who shares the first place has not lost it.
    leaderId: holdsFirst(rows, firstId) ? firstId : leaderOf(rows),
  };
}

function flipsOf(
  seen: Seen,
  range: AssumptionRange,
  { start }: Span,
  flips: readonly FlipSearch[],
): readonly Flip[] {
  const rowsOf = (value: number): readonly ScoredRow[] => seen.at({ range, value });
  const flipAt = (side: Flip['side'], value: number, before: readonly ScoredRow[]): Flip => ({
    side,
    value,
    leaderId: leaderOf(rowsOf(value)),
    because: becauseOf(before, rowsOf(value), seen.firstId, (id) => labelOf(seen, id)),
  });
  if (!holdsFirst(rowsOf(start), seen.firstId)) return [flipAt('at', start, seen.plan)];
  return flips
    .filter(({ search }) => search.range === range)
    .map(({ search, bracket }) => flipAt(search.side, bracket.flips, rowsOf(bracket.holds)));
}

function labelOf({ subject }: Seen, id: string): string {
  return subject.inputs.scenarios.find((scenario) => scenario.id === id)?.label ?? id;
}
