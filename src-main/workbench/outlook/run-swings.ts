import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Swings } from '../../../shared-types/swings.ts';
import { holdsFirst, leaderOf } from '../../model/judge/first-place.ts';
import type { Crew } from '../crew.ts';
import type { LongRun } from '../run-book.ts';
import type { AssumptionRange, Span } from './assumption-range.ts';
import { narrowedFlips, type Walk } from './narrow-flips.ts';
import { planPoint, rowsAt, takesWalks, type SwingPoint, type WalkedFigures } from './swing-figures.ts';
import { heldIn, sidesOf, type SideSearch } from './swing-search.ts';
import type { SwingSubject } from './swing-subject.ts';
import { walksFor } from './swing-walks.ts';
import { writeSwings } from './write-swings.ts';

/** Where the bar stands when the plan is walked, and when the ends are; the flips take the rest (as measured on the demo). */
const planDone = 0.1;
const endsDone = 0.7;

/**
 * A way out of the plan is tried at so many values at first. What is only reckoned costs nothing. Of what is walked a piece is
 * taken to turn the order once at most: the whole way of a narrow range, half of it where the days between walls go far.
 */
const pieces = { reckoned: 8, narrow: 1, far: 2 } as const;

/** Moves every assumption alone, and finds where the first of the plan gives up its place. */
export function startSwings(
  subject: SwingSubject,
  walked: WalkedFigures,
  crew: Crew,
  onShare: (share: number) => void,
): LongRun<Swings> {
  let stop = (): void => undefined;
  let stopped = false;
  const walk: Walk = async (points, from, to) => {
    if (stopped) return false;
    const walks = walksFor(subject, walked, points);
    const run = crew.start(
      'figures',
      walks.map(({ job }) => job),
      {
        onProgress: (share) => onShare(from + share * (to - from)),
        onResult: (figures, index) => void walked.set(walks[index]!.name, figures),
      },
    );
    stop = () => run.cancel();
    return (await run.results) !== null;
  };
  return {
    answer: answerOf(subject, walked, walk),
    cancel: () => {
      stopped = true;
      stop();
    },
  };
}

const cancelled = failure('cancelled', 'The search for what would change the answer was stopped.');

async function answerOf(subject: SwingSubject, walked: WalkedFigures, walk: Walk): Promise<Outcome<Swings>> {
  if (!(await walk([planPoint], 0, planDone))) return cancelled;
  const plan = rowsAt(subject, walked, planPoint);
  const firstId = leaderOf(plan);
  if (firstId === null)
    return failure('bad-input', 'Your limits leave out every scenario: there is no first place to lose.');
  const level = plan.filter(({ rank }) => rank === 1).length > 1;
  const sides = subject.ranges.flatMap((range) => {
    const span = range.span(subject.inputs);
    return sidesOf(range, span, level ? 1 : piecesOf(subject, walked, range, span));
  });
  if (!(await walk(pointsOf(sides), planDone, endsDone))) return cancelled;
  const holds = (point: SwingPoint): boolean => holdsFirst(rowsAt(subject, walked, point), firstId);
  const held = level ? [] : sides.flatMap((side) => heldIn(side, holds) ?? []);
  const flips = await narrowedFlips(held, holds, walk, endsDone);
  return flips === null ? cancelled : success(writeSwings(subject, walked, flips));
}

function piecesOf(subject: SwingSubject, walked: WalkedFigures, range: AssumptionRange, span: Span): number {
  const walks = [span.low, span.high].some((value) => takesWalks(subject, walked, { range, value }));
  if (!walks) return pieces.reckoned;
  return span.whole ? pieces.far : pieces.narrow;
}

function pointsOf(sides: readonly SideSearch[]): readonly SwingPoint[] {
  return sides.flatMap(({ range, outward }) => outward.map((value) => ({ range, value })));
}
