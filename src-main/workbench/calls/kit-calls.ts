import type { Handlers } from '../../../shared-types/contract.ts';
import { success } from '../../../shared-types/outcome.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import type { Crew } from '../crew.ts';
import { prepareSearch } from '../kit-search/prepare-search.ts';
import { startKitSearch, type KitSearch } from '../kit-search/search.ts';
import type { RunBook } from '../run-book.ts';

/** Kits a second of a small computer, until this one has shown what it manages. */
const usualKitsPerSecond = 300;
/** A search of fewer kits says little of the computer. */
const tellingKits = 200;

/** The calls of the kit search. */
export function kitCalls(
  catalogue: OpenedCatalogue,
  crew: Crew,
  book: RunBook,
  nowMs: () => number,
): Pick<Handlers, 'kits.search' | 'kits.soFar'> {
  const underWay = new Map<string, KitSearch>();
  let kitsPerSecond = usualKitsPerSecond;
  return {
    'kits.search': async ({ runId, ...request }) => {
      const prepared = withStorageOutcome(() => prepareSearch(catalogue, request, kitsPerSecond));
      if (!prepared.ok) return prepared;
      let search: KitSearch | undefined;
      const outcome = await book.enter(runId, (onShare) => {
        search = startKitSearch(prepared.value, crew, onShare, nowMs);
        underWay.set(runId, search);
        return search;
      });
      // A name in use is the other search's.
      if (search !== undefined) underWay.delete(runId);
      if (outcome.ok && outcome.value.complete && outcome.value.tally.kits >= tellingKits)
        kitsPerSecond = outcome.value.tally.kits / outcome.value.seconds;
      return outcome;
    },
    'kits.soFar': ({ runId }) => success({ result: underWay.get(runId)?.soFar() ?? null }),
  };
}
