import type { BreakEvenMap } from '../../../shared-types/break-even.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Preferences } from '../../../shared-types/settings.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import type { Crew } from '../crew.ts';
import type { LongRun, RunBook } from '../run-book.ts';
import { drawMap } from './draw-map.ts';
import { usualMapPlan } from './map-grid.ts';
import { figuresKey, mapSubject, type MapQuestion, type MapSubject } from './map-subject.ts';
import { writeMap, type DrawnMap } from './write-map.ts';

/** Draws break-even maps under the names their callers gave them; the last one is kept, so that it can be ranked anew. */
export interface MapDesk {
  draw(runId: string, question: MapQuestion): Promise<Outcome<BreakEvenMap>>;
  /** Ranks the last map under other weights and limits, without a walk. */
  rank(of: Pick<MapQuestion, 'tourId' | 'leg'>, preferences: Preferences): Outcome<BreakEvenMap>;
}

interface Kept {
  readonly key: string;
  readonly drawn: DrawnMap;
}

export function createMapDesk(
  catalogue: OpenedCatalogue,
  crew: Crew,
  book: RunBook,
  plan = usualMapPlan,
): MapDesk {
  let kept: Kept | null = null;
  const start = (
    subject: MapSubject,
    key: string,
    onShare: (share: number) => void,
  ): LongRun<BreakEvenMap> => {
    const run = drawMap(subject, plan, crew, onShare);
    const answer = async (): Promise<Outcome<BreakEvenMap>> => {
      const mapped = await run.results;
      if (mapped === null) return failure('cancelled', 'The map was stopped.');
      kept = { key, drawn: { subject, plan, mapped } };
      return success(writeMap(kept.drawn, subject.ground.settings.preferences));
    };
    return { answer: answer(), cancel: () => run.cancel() };
  };
  return {
    draw: async (runId, question) => {
      const subject = withStorageOutcome(() => mapSubject(catalogue, question));
      if (!subject.ok) return subject;
      const key = figuresKey(subject.value);
      if (kept?.key === key) return success(writeMap(kept.drawn, subject.value.ground.settings.preferences));
      return book.enter(runId, (onShare) => start(subject.value, key, onShare));
    },
    rank: ({ tourId, leg }, preferences) => {
      const subject = kept?.drawn.subject;
      if (kept === null || subject?.ground.tour.id !== tourId || subject.leg !== leg)
        return failure('not-found', 'That map is not kept (any more): draw it again.');
      return success(writeMap(kept.drawn, preferences));
    },
  };
}
