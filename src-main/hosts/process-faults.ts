import type { Report } from './fault-log.ts';

/** What of `process` is used here. */
interface Faulty {
  on(event: 'uncaughtExceptionMonitor', listener: (fault: Error) => void): unknown;
}

/** Writes a fault that nothing caught, a rejection too, to the log before the process ends of it as it would have. */
export function reportProcessFaults(program: Faulty, report: Report): void {
  program.on('uncaughtExceptionMonitor', (fault) => report('process', fault));
}
