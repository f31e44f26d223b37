import type { FaultBook } from '../workbench/fault-book.ts';
import { faultLog, faultLogFile } from './fault-log.ts';
import { recentFaults } from './recent-faults.ts';

/** The log of a data folder, to write to and to read back. */
export function openFaultBook(folder: string): FaultBook {
  return {
    file: faultLogFile(folder),
    report: faultLog(folder),
    recent: (count) => recentFaults(folder, count),
  };
}
