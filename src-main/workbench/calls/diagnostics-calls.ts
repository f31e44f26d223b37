import { statSync } from 'node:fs';
import { arch, homedir, release, type as systemName } from 'node:os';
import type { Handlers } from '../../../shared-types/contract.ts';
import type { Diagnostics } from '../../../shared-types/diagnostics.ts';
import { success } from '../../../shared-types/outcome.ts';
import { sqliteVersion } from '../../catalogue/connection.ts';
import type { CatalogueFacts } from '../catalogue-desk.ts';
import type { FaultBook } from '../fault-book.ts';

/** More than these tell nothing new of what is wrong now (common practice). */
const faultsShown = 20;
/** A page in trouble must not fill the disk. */
const mostPageFaults = 100;

interface Surroundings extends Pick<Diagnostics, 'version' | 'host' | 'dataFolder'> {
  readonly faults: FaultBook;
  readonly catalogue: () => CatalogueFacts;
}

/** The calls that help to find a fault. */
export function diagnosticsCalls({
  faults,
  catalogue,
  ...program
}: Surroundings): Pick<Handlers, 'diagnostics.get' | 'diagnostics.report'> {
  let pageFaults = 0;
  return {
    'diagnostics.get': () => {
      const { file, step } = catalogue();
      return success({
        ...program,
        parts: parts(),
        catalogue: { file, bytes: bytesOf(file), step },
        logFile: faults.file,
        faults: faults.recent(faultsShown),
        homeFolder: homedir(),
      });
    },
    'diagnostics.report': ({ where, what }) => {
      pageFaults += 1;
      if (pageFaults > mostPageFaults) return success({ logged: false });
      faults.report(`page, ${where}`, what);
      return success({ logged: true });
    },
  };
}

/** With what is written ahead and not yet in the file itself. */
function bytesOf(file: string): number | null {
  const [own = null, ahead] = [file, `${file}-wal`].map(sizeOf);
  return own === null ? null : own + (ahead ?? 0);
}

/** Null where nothing is there, and where it can't be looked at: what keeps it from being opened is told elsewhere. */
function sizeOf(path: string): number | null {
  try {
    return statSync(path).size;
  } catch {
    return null;
  }
}

function parts(): Diagnostics['parts'] {
  const { electron, chrome, node } = process.versions;
  const all: readonly (readonly [string, string | undefined])[] = [
    ['Electron', electron],
    ['Chromium', chrome],
    ['Node.js', node],
    ['SQLite', sqliteVersion()],
    ['System', `${systemName()} ${release()}, ${arch()}`],
  ];
  return all.flatMap(([name, version]) => (version === undefined ? [] : [{ name, version }]));
}
