import { z } from 'zod';

/** A fault that was written to the log. */
export interface LoggedFault {
  /** ISO 8601, in UTC. */
  readonly at: string;
  /** The call or part in which it arose. */
  readonly where: string;
  readonly what: string;
}

/** What helps to find a fault: nothing of what the rider stored. */
export interface Diagnostics {
  readonly version: string;
  readonly host: 'electron' | 'loopback';
  /** What the program runs on and with, such as SQLite: names and versions. */
  readonly parts: readonly { readonly name: string; readonly version: string }[];
  readonly dataFolder: string;
  readonly catalogue: {
    readonly file: string;
    /** Null where it can't be read. */
    readonly bytes: number | null;
    /** The step of its tables; null while it is not open. */
    readonly step: number | null;
  };
  readonly logFile: string;
  /** The newest first. */
  readonly faults: readonly LoggedFault[];
  /** What stands in paths for the rider's name; left out of what is copied. */
  readonly homeFolder: string;
}

export const longestWhere = 200;
export const longestWhat = 4000;

/** A fault of the page, for the log. */
export const pageFault = z.strictObject({
  where: z.string({ error: 'the part of the page' }).max(longestWhere, {
    error: `at most ${longestWhere} characters`,
  }),
  what: z.string({ error: 'the fault in words' }).max(longestWhat, {
    error: `at most ${longestWhat} characters`,
  }),
});
