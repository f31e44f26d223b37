import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundledListName } from './bundled-packages.ts';
import { neededPackages, type LockedPackages } from './locked-packages.ts';

/** Dependencies that the packaged program never loads from a folder of theirs, and why. */
const notLoaded: Readonly<Record<string, string>> = {
  'chart.js': 'its code is in the built page',
  '@fontsource/source-sans-3': 'its fonts are among the files of the built page',
  open: 'only `npm start` opens a browser',
  'node-addon-api': 'header files for whoever compiles better-sqlite3 themselves',
};

/** The folders of the packages that are copied into the packaged program. */
export function copiedPackages(lock: LockedPackages): ReadonlySet<string> {
  return neededPackages(lock, new Set(Object.keys(notLoaded)));
}

/** The folders of dependencies that stay behind, with whatever only they need. */
export function leftBehind(lock: LockedPackages): readonly string[] {
  const copied = copiedPackages(lock);
  return [...neededPackages(lock)].filter((folder) => !copied.has(folder));
}

const bundles = ['main', 'preload', 'renderer'];

/** The folders of the packages whose code or files the bundler put into the built app. Throws before the first build. */
function bundledPackages(projectFolder: string): readonly string[] {
  return bundles.flatMap((bundle) => {
    const list = join(projectFolder, 'out', bundle, bundledListName);
    if (!existsSync(list)) throw new Error('The app has not been built: run "npm run build" first.');
    return JSON.parse(readFileSync(list, 'utf8')) as readonly string[];
  });
}

/** The folders of all packages of others that ship with the program, copied or bundled, in order. */
export function shippedPackages(projectFolder: string, lock: LockedPackages): readonly string[] {
  return [...new Set([...copiedPackages(lock), ...bundledPackages(projectFolder)])].toSorted();
}
