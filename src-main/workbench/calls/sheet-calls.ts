import { randomUUID } from 'node:crypto';
import type { Handlers } from '../../../shared-types/contract.ts';
import { success } from '../../../shared-types/outcome.ts';
import { makeSheet } from '../../sheet/make-sheet.ts';
import { withFileOutcome } from '../file-fault.ts';
import type { FileDesk } from '../file-desk.ts';
import type { ComparisonDesk } from '../comparison-desk.ts';

/** The calls that hand files to the rider or take one from them. */
export function sheetCalls(
  desk: ComparisonDesk,
  files: FileDesk,
  version: string,
  today: () => string,
): Pick<Handlers, 'sheet.save' | 'files.choose'> {
  return {
    'sheet.save': ({ tourId, scenarioIds, format }) =>
      withFileOutcome(async () => {
        const comparison = await desk.run(randomUUID(), tourId, scenarioIds);
        if (!comparison.ok) return comparison;
        const file = await makeSheet(format, comparison.value, { madeOn: today(), version });
        return success(await files.save(file));
      }),
    'files.choose': ({ purpose }) => withFileOutcome(async () => success(await files.choose(purpose))),
  };
}
