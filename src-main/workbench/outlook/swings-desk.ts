import type { Outcome } from '../../../shared-types/outcome.ts';
import type { Swings } from '../../../shared-types/swings.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import type { Crew } from '../crew.ts';
import type { RunBook } from '../run-book.ts';
import { startSwings } from './run-swings.ts';
import type { WalkedFigures } from './swing-figures.ts';
import { figuresKey, swingSubject, type SwingQuestion } from './swing-subject.ts';

/**
 * Finds swings under the names their callers gave the runs. What was walked last is kept: asked again under other weights or
 * limits, or after a stop, only what is new is walked.
 */
export interface SwingsDesk {
  find(runId: string, question: SwingQuestion): Promise<Outcome<Swings>>;
}

export function createSwingsDesk(catalogue: OpenedCatalogue, crew: Crew, book: RunBook): SwingsDesk {
  let kept: { readonly key: string; readonly walked: WalkedFigures } | null = null;
  return {
    find: async (runId, question) => {
      const subject = withStorageOutcome(() => swingSubject(catalogue, question));
      if (!subject.ok) return subject;
      const key = figuresKey(subject.value);
      if (kept?.key !== key) kept = { key, walked: new Map() };
      const { walked } = kept;
      return book.enter(runId, (onShare) => startSwings(subject.value, walked, crew, onShare));
    },
  };
}
