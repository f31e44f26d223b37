import type { Handlers } from '../../shared-types/contract.ts';
import { success } from '../../shared-types/outcome.ts';
import { claimFolder } from '../catalogue/claim.ts';
import { climateCredit, climateSources } from '../catalogue/climate-credit.ts';
import { writeClimateNotes } from '../catalogue/climate-notes.ts';
import { diagnosticsCalls } from './calls/diagnostics-calls.ts';
import { placeCalls } from './calls/place-calls.ts';
import { createCatalogueDesk } from './catalogue-desk.ts';
import type { Crew } from './crew.ts';
import type { FaultBook } from './fault-book.ts';
import type { FileDesk } from './file-desk.ts';

export interface WorkbenchOptions {
  /** The folder that holds the catalogue; made when missing. */
  readonly dataFolder: string;
  readonly host: 'electron' | 'loopback';
  readonly version: string;
  readonly files: FileDesk;
  readonly faults: FaultBook;
  /** Closed with the workbench. */
  readonly crew: Crew;
}

export interface Workbench {
  readonly handlers: Handlers;
  close(): void;
}

/** Another Chargewright works on the same data folder; the message says which. */
export class FolderTakenError extends Error {
  constructor(dataFolder: string, holder: string | null) {
    super(
      `Chargewright is open already on ${dataFolder}${holder === null ? '' : ` (${holder})`}. Use that one, or close it first.`,
    );
    this.name = 'FolderTakenError';
  }
}

const hostWords = { electron: 'in its window', loopback: 'in a browser' } as const;

/**
 * Opens the workbench on a data folder: the catalogue in it, the demo on a first start, and a handler for every call of the
 * contract. A catalogue that can't be opened is an answer of `catalogue.state`, with ways on. Throws a `FolderTakenError`
 * when another Chargewright has the folder.
 */
export function openWorkbench(options: WorkbenchOptions): Workbench {
  const { version, host, dataFolder, files, faults, crew } = options;
  const now = (): Date => new Date();
  const claim = claimFolder(dataFolder, `${hostWords[host]}, process ${process.pid}`);
  if (claim.as === 'taken') throw new FolderTakenError(dataFolder, claim.holder);
  try {
    const desk = createCatalogueDesk(dataFolder, { version, files, crew, now });
    writeClimateNotes(dataFolder);
    return {
      handlers: {
        ...desk.handlers,
        about: () => success({ version, host, dataFolder, climateCredit, climateSources }),
        ...diagnosticsCalls({ version, host, dataFolder, faults, catalogue: desk.facts }),
        ...placeCalls(desk, { dataFolder, files, now }),
      },
      close: () => {
        desk.close();
        claim.release();
      },
    };
  } catch (thrown) {
    claim.release();
    throw thrown;
  }
}
