import { homedir } from 'node:os';
import { statSync } from 'node:fs';
import { dirname, isAbsolute, join } from 'node:path';
import type {
  CatalogueBackup,
  CatalogueOpening,
  CatalogueState,
} from '../../../shared-types/catalogue-file.ts';
import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, shown, success, type Outcome } from '../../../shared-types/outcome.ts';
import { backUp, backupFolder } from '../../catalogue/backup.ts';
import { isBackupName } from '../../catalogue/backup-names.ts';
import { backupOf, copyBackup, freeBeside, listBackups, listBeside } from '../../catalogue/beside.ts';
import { catalogueInUse, type CatalogueInUse } from '../../catalogue/in-use.ts';
import { removeMade } from '../../catalogue/open.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import type { CatalogueDesk } from '../catalogue-desk.ts';
import type { FileDesk } from '../file-desk.ts';

type PlaceCalls = Pick<Handlers, Extract<keyof Handlers, `catalogue.${string}`>>;

export interface PlaceSurroundings {
  readonly dataFolder: string;
  readonly files: FileDesk;
  readonly now: () => Date;
}

/** The calls that say where the catalogue is, and put another in its place. No call removes or overwrites one. */
export function placeCalls(desk: CatalogueDesk, { dataFolder, files, now }: PlaceSurroundings): PlaceCalls {
  const inUse = (): string => desk.state().file;
  return {
    'catalogue.state': () => success(desk.state()),
    'catalogue.tryAgain': () => success(desk.tryAgain()),
    'catalogue.choices': () =>
      success({
        backupFolder: backupFolder(inUse()),
        backups: listBackups(inUse()),
        beside: listBeside([dataFolder, dirname(inUse())], knownInUse(desk.state())),
      }),
    'catalogue.backUp': () =>
      withStorageOutcome(() => {
        const opened = desk.opened();
        if (opened === null) return failure('storage', 'A catalogue that is not open can not be copied.');
        const at = now();
        return success(backupOf(backUp(opened.write, inUse(), at), at.toISOString()));
      }),
    'catalogue.restore': ({ name }) => restore(desk, inUse(), name),
    'catalogue.startEmpty': () => desk.use(freeBeside(inUse()), false),
    'catalogue.openOther': async ({ path }) => {
      if (path !== null) return openAt(desk, path);
      const chosen = await files.chooseFolder();
      return chosen.as === 'chosen' ? openAt(desk, chosen.path) : success(chosen);
    },
  };
}

/** Where the note of it can't be read, any catalogue there may be the one: the usual too. */
function knownInUse({ file, trouble }: CatalogueState): string | null {
  return trouble?.fault === 'unreachable' ? null : file;
}

/** Uses a copy of the backup of that name; without a name, of the newest that can be used. */
async function restore(
  desk: CatalogueDesk,
  file: string,
  name: string | null,
): Promise<Outcome<CatalogueState>> {
  const folder = backupFolder(file);
  const backups = listBackups(file);
  const named = backups.filter((each) => each.name === name);
  if (name !== null && named.length === 0)
    return failure('not-found', `There is no backup ${name} in ${folder} (any more).`);
  let refusal: Outcome<CatalogueState> = failure('not-found', `There is no sound backup in ${folder}.`);
  for (const backup of name === null ? backups.filter(({ unfit }) => unfit === null) : named) {
    const used = await useCopy(desk, backup, file);
    if (used.ok) return used;
    refusal = used;
  }
  return refusal;
}

async function useCopy(
  desk: CatalogueDesk,
  { name, unfit }: CatalogueBackup,
  file: string,
): Promise<Outcome<CatalogueState>> {
  if (unfit !== null) return failure('storage', unfit);
  const made = freeBeside(file);
  const copied = withStorageOutcome(() => {
    copyBackup(join(backupFolder(file), name), made);
    return success(made);
  }, made);
  if (!copied.ok) return copied;
  const used = await desk.use(made, true);
  if (!used.ok) removeMade(made);
  return used;
}

async function openAt(desk: CatalogueDesk, path: string): Promise<Outcome<CatalogueOpening>> {
  const place = withStorageOutcome(() => placeAt(path));
  if (!place.ok) return place;
  const used = await desk.use(place.value.file, place.value.chosen);
  return used.ok ? success({ as: 'opened', state: used.value }) : used;
}

/** The catalogue at a path, or the one that a folder uses; in a folder without one it is made. */
function placeAt(given: string): Outcome<CatalogueInUse> {
  const path = given.trim().replace(/^~(?=[/\\]|$)/, homedir());
  if (!isAbsolute(path))
    return refusedPath(given, 'a path from the root of a disk on, or one that begins with ~');
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return failure('not-found', `There is nothing at ${path}.`);
  if (found.isDirectory()) return success(catalogueInUse(path));
  if (!found.isFile()) return refusedPath(given, 'a catalogue’s file or a folder');
  // Copied to another folder it is a catalogue like any other.
  if (isBackupName(path) && dirname(path) === backupFolder(dirname(path)))
    return failure(
      'in-use',
      `${path} is a backup. Restore it instead, so that it stays as it is; nothing was changed.`,
    );
  return success({ file: path, chosen: true });
}

function refusedPath(got: string, allowed: string): ReturnType<typeof failure> {
  return failure('bad-input', `path: allowed is ${allowed}.`, [{ path: 'path', allowed, got: shown(got) }]);
}
