import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';

/** What the lock file says of one installed package. */
export interface LockedPackage {
  readonly version?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

/** The installed packages by their folder, as `node_modules/sax`; the project itself stands under the empty name. */
export type LockedPackages = Readonly<Record<string, LockedPackage>>;

export function readLock(projectFolder: string): LockedPackages {
  const text = readFileSync(join(projectFolder, 'package-lock.json'), 'utf8');
  return (JSON.parse(text) as { readonly packages: LockedPackages }).packages;
}

/** The folder in which Node finds a package for the one that asks: its own `node_modules`, or the nearest further out. */
function folderFor(lock: LockedPackages, asking: string, name: string): string | null {
  const own = posix.join(asking, 'node_modules', name);
  if (own in lock) return own;
  return asking === '' ? null : folderFor(lock, outer(asking), name);
}

/** `node_modules/a/node_modules/b` -> `node_modules/a` -> the project. */
function outer(folder: string): string {
  const end = folder.lastIndexOf('/node_modules/');
  return end === -1 ? '' : folder.slice(0, end);
}

/**
 * The folders of all packages that the project's own dependencies need to run, those of developing left aside, and
 * without going into the packages named in `except`. An optional package that this system lacks is passed over.
 */
export function neededPackages(
  lock: LockedPackages,
  except: ReadonlySet<string> = new Set(),
): ReadonlySet<string> {
  const needed = new Set<string>();
  const visit = (asking: string): void => {
    const { dependencies, optionalDependencies } = lock[asking] ?? {};
    for (const name of Object.keys({ ...dependencies, ...optionalDependencies })) {
      const folder = except.has(name) ? null : folderFor(lock, asking, name);
      if (folder === null || needed.has(folder)) continue;
      needed.add(folder);
      visit(folder);
    }
  };
  visit('');
  return needed;
}
