import { closeSync, fchmodSync, mkdirSync, openSync, renameSync, statSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { entryText } from './fault-entry.ts';
import { FaultRepeats } from './fault-repeats.ts';
import { faultWords } from './fault-words.ts';

/** A log past this size is set aside, and the one set aside before it dropped. */
const largestLogBytes = 1_000_000;
/** Nobody but the rider: what went wrong can tell what they do. */
const ownMode = 0o600;

export type Report = (where: string, fault: unknown) => void;

/** The log of a data folder. */
export function faultLogFile(folder: string): string {
  return join(folder, 'faults.log');
}

/** What was the log before it grew too large. */
export function formerFaultLogFile(folder: string): string {
  return `${faultLogFile(folder)}.old`;
}

function rotate(folder: string): void {
  const size = statSync(faultLogFile(folder), { throwIfNoEntry: false })?.size ?? 0;
  if (size > largestLogBytes) renameSync(faultLogFile(folder), formerFaultLogFile(folder));
}

function append(folder: string, entry: string): void {
  try {
    mkdirSync(folder, { recursive: true });
    rotate(folder);
    const log = openSync(faultLogFile(folder), 'a', ownMode);
    try {
      fchmodSync(log, ownMode);
      writeSync(log, entry);
    } finally {
      closeSync(log);
    }
  } catch {
    // The terminal has the fault already; a log that can't be written must not hide it behind another.
  }
}

/**
 * Writes faults of ours to the terminal and to a log beside the catalogue: where, and the stack, never the input. One that
 * comes again and again is counted.
 */
export function faultLog(folder: string): Report {
  const repeats = new FaultRepeats();
  return (where, fault) => {
    const words = faultWords(fault);
    const now = new Date();
    const times = repeats.worthWriting(`${where}: ${words}`, now.getTime());
    if (times === null) return;
    const what = times === 1 ? words : `(${times} times so far) ${words}`;
    const entry = entryText({ at: now.toISOString(), where, what });
    // Unlike the stream itself, the console bears a terminal that has gone.
    console.error(entry.trimEnd());
    append(folder, entry);
  };
}
