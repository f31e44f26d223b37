import { join } from 'node:path';
import type { CatalogueState, CatalogueTrouble } from '../../shared-types/catalogue-file.ts';
import { callNames, type Handlers } from '../../shared-types/contract.ts';
import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import { catalogueInUse, keepInUse, usualCatalogue } from '../catalogue/in-use.ts';
import { schemaVersion } from '../catalogue/migrate.ts';
import type { OpenedCatalogue } from '../catalogue/open.ts';
import { asStorageError } from '../catalogue/storage-error.ts';
import { openContent, type Content, type ContentHandlers, type ContentSurroundings } from './content.ts';

/** What is told of the catalogue to whoever looks for a fault. */
export interface CatalogueFacts {
  readonly file: string;
  /** The step of its tables; null while it is not open. */
  readonly step: number | null;
}

/** Holds the one catalogue in use, or what keeps it from being opened, and changes it for another. */
export interface CatalogueDesk {
  /** Answer `storage` while it is not open. */
  readonly handlers: ContentHandlers;
  readonly state: () => CatalogueState;
  readonly facts: () => CatalogueFacts;
  /** Null while it is not open. */
  readonly opened: () => OpenedCatalogue | null;
  tryAgain(): CatalogueState;
  /** Uses another file from now on; where that can't be opened, nothing changes. */
  use(file: string, mustExist: boolean): Promise<Outcome<CatalogueState>>;
  close(): void;
}

type Held =
  | { readonly file: string; readonly content: Content; readonly trouble: null }
  | { readonly file: string; readonly content: null; readonly trouble: CatalogueTrouble };

export function createCatalogueDesk(dataFolder: string, surroundings: ContentSurroundings): CatalogueDesk {
  let held = holdInUse(dataFolder, surroundings);
  let notKept: string | null = null;
  const state = (): CatalogueState => ({
    file: held.file,
    trouble: held.trouble,
    notKept,
    backupFault: held.content?.catalogue.backupFault ?? null,
  });
  return {
    handlers: relay(() => held),
    state,
    facts: () => factsOf(held),
    opened: () => held.content?.catalogue ?? null,
    tryAgain: () => {
      if (held.trouble !== null) held = holdInUse(dataFolder, surroundings);
      return state();
    },
    use: async (file, mustExist) => {
      const next = hold(file, mustExist, surroundings);
      if (next.trouble !== null) return failure('storage', next.trouble.message);
      const former = held;
      held = next;
      notKept = keepChoice(dataFolder, file);
      await former.content?.close();
      return success(state());
    },
    close: () => {
      surroundings.crew.close();
      held.content?.catalogue.close();
    },
  };
}

function holdInUse(dataFolder: string, surroundings: ContentSurroundings): Held {
  const usual = join(dataFolder, usualCatalogue);
  return heldOrTrouble(usual, () => {
    const { file, chosen } = catalogueInUse(dataFolder);
    return hold(file, chosen, surroundings);
  });
}

function hold(file: string, mustExist: boolean, surroundings: ContentSurroundings): Held {
  return heldOrTrouble(file, () => ({
    file,
    content: openContent(file, mustExist, surroundings),
    trouble: null,
  }));
}

function heldOrTrouble(file: string, open: () => Held): Held {
  try {
    return open();
  } catch (thrown) {
    const error = asStorageError(thrown, file);
    if (error === null) throw thrown;
    return { file, content: null, trouble: { fault: error.fault, message: error.message } };
  }
}

function factsOf({ file, content }: Held): CatalogueFacts {
  return { file, step: content === null ? null : schemaVersion(content.catalogue.read) };
}

/** Why the choice is forgotten when the program ends; null where it is kept. */
function keepChoice(dataFolder: string, file: string): string | null {
  try {
    keepInUse(dataFolder, file);
    return null;
  } catch (thrown) {
    if (!(thrown instanceof Error && 'code' in thrown)) throw thrown;
    return (
      `The next start takes the former catalogue again, for the choice of ${file} could not be written down in ` +
      `${dataFolder}. Check the disk and the permissions of that folder, then choose it once more.`
    );
  }
}

/** One handler for each call about content, which asks the catalogue that is open just then. */
function relay(held: () => Held): ContentHandlers {
  const entries = callNames.map((name) => {
    const handler = (input: unknown): unknown => {
      const { content, trouble } = held();
      if (trouble !== null) return failure('storage', trouble.message);
      return (content.handlers as Handlers)[name](input as never);
    };
    return [name, handler] as const;
  });
  return Object.fromEntries(entries) as unknown as ContentHandlers;
}
