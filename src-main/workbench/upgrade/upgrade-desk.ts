import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Upgrade, UpgradeQuestion } from '../../../shared-types/upgrade.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import type { Crew } from '../crew.ts';
import type { LongRun, RunBook } from '../run-book.ts';
import { prepareUpgrade, type PreparedUpgrade } from './prepare-upgrade.ts';
import { writeUpgrade } from './write-upgrade.ts';

/** Checks changes of a kit under the names their callers gave the runs. */
export interface UpgradeDesk {
  check(runId: string, question: UpgradeQuestion): Promise<Outcome<Upgrade>>;
}

export function createUpgradeDesk(catalogue: OpenedCatalogue, crew: Crew, book: RunBook): UpgradeDesk {
  return {
    check: async (runId, question) => {
      const prepared = withStorageOutcome(() => prepareUpgrade(catalogue, question));
      if (!prepared.ok) return prepared;
      return book.enter(runId, (onShare) => carryOut(prepared.value, crew, onShare));
    },
  };
}

/** Walks both kits through every tour; each pair meets the same histories. */
function carryOut(
  prepared: PreparedUpgrade,
  crew: Crew,
  onProgress: (share: number) => void,
): LongRun<Upgrade> {
  const { before, after } = prepared.kit;
  const inputs = prepared.grounds.flatMap(({ ground }) =>
    [before, after].map((scenario) => ({ ground, scenario })),
  );
  const run = crew.start('upgrade', inputs, { onProgress });
  const answer = async (): Promise<Outcome<Upgrade>> => {
    const walked = await run.results;
    return walked === null
      ? failure('cancelled', 'The upgrade check was stopped.')
      : success(writeUpgrade(prepared, walked));
  };
  return { answer: answer(), cancel: () => run.cancel() };
}
