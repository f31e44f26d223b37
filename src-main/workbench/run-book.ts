import { failure, type Outcome } from '../../shared-types/outcome.ts';

/** A long answer in the making. */
export interface LongRun<T> {
  readonly answer: Promise<Outcome<T>>;
  cancel(): void;
}

/** The long runs under way, by the names their callers gave them. */
export interface RunBook {
  /** Keeps a run in the book until it has answered. A name already in use is refused. */
  enter<T>(runId: string, start: (onShare: (share: number) => void) => LongRun<T>): Promise<Outcome<T>>;
  /** How far a run is, 0..1; null when none of that name is under way. */
  progress(runId: string): number | null;
  /** @returns whether there was anything to cancel */
  cancel(runId: string): boolean;
  /** Cancels every run; done once each has answered. */
  cancelAll(): Promise<void>;
}

interface Entry {
  share: number;
  cancel(): void;
  answered: Promise<unknown>;
}

export function createRunBook(): RunBook {
  const entries = new Map<string, Entry>();
  return {
    enter: async (runId, start) => {
      if (entries.has(runId)) return failure('in-use', `A run named ${runId} is under way already.`);
      const entry: Entry = { share: 0, cancel: () => undefined, answered: Promise.resolve() };
      entries.set(runId, entry);
      try {
        const run = start((share) => void (entry.share = share));
        entry.cancel = () => run.cancel();
        entry.answered = run.answer;
        return await run.answer;
      } finally {
        entries.delete(runId);
      }
    },
    progress: (runId) => entries.get(runId)?.share ?? null,
    cancel: (runId) => {
      const known = entries.get(runId);
      known?.cancel();
      return known !== undefined;
    },
    cancelAll: async () => {
      const all = [...entries.values()];
      for (const entry of all) entry.cancel();
      await Promise.allSettled(all.map(({ answered }) => answered));
    },
  };
}
