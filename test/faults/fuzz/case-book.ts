import { threadCpuUsage } from 'node:process';
import { afterAll } from 'vitest';
import type { Outcome } from '../../../shared-types/outcome.ts';
import { isFullRun } from '../../support/full-run.ts';

/** Counts what was tried and how long it took; a full run prints it. */
export interface CaseBook {
  /** Counts a case. */
  readonly count: () => void;
  /** Does one piece of work of a case, which fails where it takes too long, but for the time it is let run on purpose. */
  readonly timed: (
    what: string,
    work: () => Promise<Outcome<unknown>>,
    letRunMs?: number,
  ) => Promise<Outcome<unknown>>;
}

/** What one answer may take of this thread: the machine may be busy with other things. */
const mostWorkMs = 2000;

export function caseBook(what: string): CaseBook {
  let cases = 0;
  let asked = 0;
  let taken = 0;
  let longest = { what: '', workMs: 0 };
  let mostMemory = 0;
  afterAll(() => {
    if (!isFullRun) return;
    console.info(
      `${what}: ${cases} cases, ${asked} calls, ${taken} of them ok; longest ${longest.workMs.toFixed(0)} ms (${longest.what}); ` +
        `at most ${(mostMemory / 1e6).toFixed(0)} MB`,
    );
  });
  return {
    count: () => void (cases += 1),
    timed: async (name, work, letRunMs = 0) => {
      const before = threadCpuUsage();
      const result = await work();
      const { user, system } = threadCpuUsage(before);
      const workMs = (user + system) / 1000;
      asked += 1;
      if (result.ok) taken += 1;
      if (workMs > longest.workMs) longest = { what: name, workMs };
      mostMemory = Math.max(mostMemory, process.memoryUsage.rss());
      if (workMs > mostWorkMs + letRunMs) throw new Error(`${name} took ${workMs.toFixed(0)} ms of work`);
      return result;
    },
  };
}
