import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import type { LoggedFault } from '../../shared-types/diagnostics.ts';
import { readEntries } from './fault-entry.ts';
import { faultLogFile, formerFaultLogFile } from './fault-log.ts';

/** What is read at the end of a log, however large: some sixty of the longest entries, and many more of the usual. */
const tailBytes = 250_000;

/** The last whole lines of a file; none where it is missing or can't be read. */
function tailOf(file: string): string {
  try {
    const log = openSync(file, 'r');
    try {
      const { size } = fstatSync(log);
      const bytes = Buffer.alloc(Math.min(size, tailBytes));
      const from = size - bytes.length;
      const read = readSync(log, bytes, 0, bytes.length, from);
      const text = bytes.subarray(0, read).toString();
      // A line that was cut could begin anywhere, also with what looks like an entry.
      return from === 0 ? text : text.slice(text.indexOf('\n') + 1);
    } finally {
      closeSync(log);
    }
  } catch {
    return '';
  }
}

/** The last faults in the log of a data folder, the newest first. What is damaged there is passed over. */
export function recentFaults(folder: string, count: number): readonly LoggedFault[] {
  const entries = readEntries(tailOf(faultLogFile(folder)));
  if (entries.length >= count) return entries.slice(entries.length - count).reverse();
  return [...readEntries(tailOf(formerFaultLogFile(folder))), ...entries].slice(-count).reverse();
}
