import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answer } from '../../shared-types/answer.ts';
import type { CallInput, CallName, CallResult } from '../../shared-types/contract.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import { builtFolders } from '../../src-main/hosts/built-folders.ts';
import { openFaultBook } from '../../src-main/hosts/fault-book.ts';
import { openWorkbench } from '../../src-main/workbench/open.ts';
import { createWorkerPool } from '../../src-main/workers/worker-pool.ts';

/** The bench is built into a folder beside that of the app's main process. */
const { worker } = builtFolders(import.meta.dirname);

export type BenchCall = <N extends CallName>(name: N, input: CallInput<N>) => Promise<CallResult<N>>;

/** Does work through the calls of a real workbench on a fresh data folder, as a host makes them; a call that fails ends the bench. */
export async function withWorkbench<T>(work: (call: BenchCall) => Promise<T>): Promise<T> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-bench-'));
  const workbench = openWorkbench({
    dataFolder,
    host: 'loopback',
    version: 'bench',
    files: {
      save: () => Promise.resolve({ as: 'cancelled' }),
      choose: () => Promise.resolve({ as: 'cancelled' }),
      chooseFolder: () => Promise.resolve({ as: 'cancelled' }),
    },
    faults: openFaultBook(dataFolder),
    crew: createWorkerPool(worker),
  });
  try {
    return await work(async (name, input) => {
      const outcome = (await answer(workbench.handlers, name, input, (_, fault) => {
        throw fault;
      })) as Outcome<CallResult<typeof name>>;
      if (!outcome.ok) throw new Error(outcome.error.message);
      return outcome.value;
    });
  } finally {
    workbench.close();
    rmSync(dataFolder, { recursive: true, force: true });
  }
}
