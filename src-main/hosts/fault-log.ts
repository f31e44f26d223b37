import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** A log past this size is set aside, and the one set aside before it dropped. */
const largestLogBytes = 1_000_000;

export type Report = (where: string, fault: unknown) => void;

function rotate(path: string): void {
  const size = statSync(path, { throwIfNoEntry: false })?.size ?? 0;
  if (size > largestLogBytes) renameSync(path, `${path}.old`);
}

function append(folder: string, line: string): void {
  try {
    mkdirSync(folder, { recursive: true });
    const path = join(folder, 'faults.log');
    rotate(path);
    appendFileSync(path, line);
  } catch {
    // The terminal has the fault already; a log that can't be written must not hide it behind another.
  }
}

/** Writes faults of ours to the terminal and to a log beside the catalogue: where, and the stack, never the input. */
export function faultLog(folder: string): Report {
  return (where, fault) => {
    const text = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
    const line = `${new Date().toISOString()} ${where}: ${text}\n`;
    process.stderr.write(line);
    append(folder, line);
  };
}
