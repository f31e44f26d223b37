import type { Handlers } from '../../../shared-types/contract.ts';
import { success } from '../../../shared-types/outcome.ts';
import { tellsSwings } from '../../../shared-types/sheet.ts';
import { makeSheet } from '../../sheet/make-sheet.ts';
import { withFileOutcome } from '../file-fault.ts';
import type { FileDesk } from '../file-desk.ts';
import type { SheetDesk } from '../sheet-desk.ts';

/** The calls that hand files to the rider or take one from them. */
export function sheetCalls(
  desk: SheetDesk,
  files: FileDesk,
  version: string,
  today: () => string,
): Pick<Handlers, 'sheet.save' | 'files.choose'> {
  return {
    'sheet.save': ({ runId, form, ...asked }) =>
      withFileOutcome(async () => {
        const withSwings = tellsSwings(form, asked.withSwings);
        const gathered = await desk.gather(runId, { ...asked, withSwings });
        if (!gathered.ok) return gathered;
        const file = await makeSheet(form, { ...gathered.value, stamp: { madeOn: today(), version } });
        return success(await files.save(file));
      }),
    'files.choose': ({ purpose }) => withFileOutcome(async () => success(await files.choose(purpose))),
  };
}
