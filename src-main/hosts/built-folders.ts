import { join, resolve } from 'node:path';

/** Where the parts of the built app lie. */
export interface BuiltFolders {
  readonly project: string;
  readonly renderer: string;
  readonly preload: string;
  /** The file that a worker thread runs. */
  readonly worker: string;
}

/**
 * Finds the parts from the folder of an entry file. Only entry files may ask: the bundler moves shared code into a
 * folder of its own, where `import.meta.dirname` would be another one.
 */
export function builtFolders(entryFolder: string): BuiltFolders {
  const out = resolve(entryFolder, '..');
  return {
    project: resolve(out, '..'),
    renderer: join(out, 'renderer'),
    preload: join(out, 'preload', 'preload.cjs'),
    worker: join(out, 'main', 'worker.js'),
  };
}
