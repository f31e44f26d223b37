import type { LoggedFault } from '../../shared-types/diagnostics.ts';

/** Where a host writes down faults of ours, and reads the last of them back. */
export interface FaultBook {
  /** The log's file. */
  readonly file: string;
  readonly report: (where: string, fault: unknown) => void;
  /** The newest first. */
  readonly recent: (count: number) => readonly LoggedFault[];
}
