import { join } from 'node:path';
import { expect, onTestFinished } from 'vitest';
import { contract, type CallName } from '../../../shared-types/contract.ts';
import { id } from '../../../shared-types/field.ts';
import type { Outcome } from '../../../shared-types/outcome.ts';
import { cases } from '../../support/full-run.ts';
import { crewHere } from '../../support/crew-here.ts';
import { openedWorkbench, type TestWorkbench } from '../../support/open-workbench.ts';
import type { CaseBook } from './case-book.ts';
import { layStartRows } from './start-rows.ts';
import { expectSound } from './sound-answer.ts';
import { openTableDump, type TableDump } from './table-dump.ts';

/** A workbench on the demo and a short tour that holds every answer to what every answer must keep. */
export interface FuzzedWorkbench extends Pick<TestWorkbench, 'saved'> {
  readonly tables: TableDump;
  /**
   * Asks as a host does. Fails where the answer is a fault of ours, is not sound, takes too long, or changed a row and is an error.
   */
  readonly ask: (name: CallName, input: unknown) => Promise<Outcome<unknown>>;
}

/** Fewest that the settings take. */
const fewestHistories = 20;
const catalogueName = 'catalogue.sqlite3';

export async function openFuzzed(book: CaseBook): Promise<FuzzedWorkbench> {
  const workbench = openedWorkbench({}, crewHere(), fewestHistories);
  const { call, saved, folder, faults } = workbench;
  await layStartRows(workbench);
  const tables = openTableDump(join(folder, catalogueName), join(folder, 'former.sqlite3'));
  onTestFinished(() => tables.close());
  return {
    ...{ saved, tables },
    ask: async (name, given) => {
      const input = name === 'catalogue.openOther' ? confined(given, folder) : given;
      const before = tables.rows();
      const letRunMs = isLongRun(name) ? patienceMs + lastJobMs : 0;
      const outcome = await book.timed(name, () => stopped(workbench, name, input), letRunMs);
      if (!outcome.ok && outcome.error.code === 'internal') throw faults.at(-1);
      expectSound(outcome);
      if (!outcome.ok) expect(tables.rows() === before, 'an answer that is not ok changed a row').toBe(true);
      if (name.startsWith('catalogue.'))
        await call('catalogue.openOther', { path: join(folder, catalogueName) });
      return outcome;
    },
  };
}

/** Takes the data folder for the root of the disk: no fuzz may open, or make, a catalogue elsewhere on the machine. */
function confined(input: unknown, folder: string): unknown {
  if (typeof input !== 'object' || input === null || !('path' in input)) return input;
  const { path } = input;
  return typeof path === 'string' && /^\s*[~/\\]/.test(path)
    ? { ...input, path: `${folder}/${path.trim()}` }
    : input;
}

/** A rider's patience with a long run, ms. */
const patienceMs = cases(200, 1500);
/** What a stopped run may take on top: here the job under way is done to its end, where the hosts end its thread. */
const lastJobMs = 5000;

function isLongRun(name: CallName): boolean {
  return 'runId' in contract[name].input.shape && !name.startsWith('runs.');
}

/** Asks, and stops what is a long run by its name when it takes long. */
async function stopped({ call }: TestWorkbench, name: CallName, input: unknown): Promise<Outcome<unknown>> {
  const runId = id.safeParse((input as { readonly runId?: unknown } | null | undefined)?.runId);
  if (!isLongRun(name) || !runId.success) return call(name, input as never);
  const timer = setTimeout(() => void call('runs.cancel', { runId: runId.data }), patienceMs);
  try {
    return await call(name, input as never);
  } finally {
    clearTimeout(timer);
  }
}
