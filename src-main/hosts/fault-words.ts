import { homedir } from 'node:os';
import { withoutHome } from '../../shared-types/without-home.ts';

/** The page of the loopback host: the first folder of its path is a secret of the run. */
const pageAddress = /https?:\/\/(?:127\.0\.0\.1|localhost)(?::\d+)?\/[\w-]*/g;

function stackOf(fault: unknown): string {
  try {
    return fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
  } catch {
    // Whatever was thrown, reporting it must not throw again.
    return 'Something was thrown that can not be put in words.';
  }
}

/** In characters; what a log takes no more of need not be searched through or remembered. */
const longestWords = 4000;

/** A fault as text with its stack: `~` for the home folder, which has the rider's name in it, `page` for the page's address. */
export function faultWords(fault: unknown, home: string = homedir()): string {
  return withoutHome(stackOf(fault).slice(0, longestWords), home).replace(pageAddress, 'page');
}
