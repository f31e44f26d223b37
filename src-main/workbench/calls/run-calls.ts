import type { Handlers } from '../../../shared-types/contract.ts';
import { success } from '../../../shared-types/outcome.ts';
import type { RunBook } from '../run-book.ts';

/** The calls that ask how far a long run is, and stop it. */
export function runCalls(book: RunBook): Pick<Handlers, 'runs.progress' | 'runs.cancel'> {
  return {
    'runs.progress': ({ runId }) => success({ share: book.progress(runId) }),
    'runs.cancel': ({ runId }) => success({ cancelled: book.cancel(runId) }),
  };
}
