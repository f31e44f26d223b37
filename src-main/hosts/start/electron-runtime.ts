import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Launcher } from './choose-host.ts';

/** Some 110 MB: a minute and a half over a line of 10 Mbit/s. */
const longestFetchMs = 90_000;
const longestReason = 120;

/** The folder of the installed package, or null where only what the built app needs was installed. */
export function electronFolder(): string | null {
  try {
    return dirname(createRequire(import.meta.url).resolve('electron/package.json'));
  } catch {
    return null;
  }
}

/** Where the package keeps the program, once it was fetched: its `path.txt` names it. */
export function programPath(folder: string): string | null {
  const pathFile = join(folder, 'path.txt');
  if (!existsSync(pathFile)) return null;
  const program = join(folder, 'dist', readFileSync(pathFile, 'utf8'));
  return existsSync(program) ? program : null;
}

/** Runs the package's own fetching with its noise held back; answers what went wrong, or null. */
function fetchRuntime(folder: string, limitMs: number): string | null {
  const { status, error, stderr } = spawnSync(process.execPath, [join(folder, 'install.js')], {
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
    timeout: limitMs,
  });
  if (status === 0) return null;
  if (error !== undefined && 'code' in error && error.code === 'ETIMEDOUT') {
    return `not finished after ${limitMs / 1000} s`;
  }
  const [firstLine = ''] = stderr.trim().split('\n');
  return firstLine.replace(/^\w*Error: /, '').slice(0, longestReason) || 'no reason given';
}

/** Finds the Electron program, fetching it first where the package has not done so yet. */
export function findLauncher(folder: string | null, limitMs = longestFetchMs): Launcher {
  if (folder === null) return { found: false, reason: 'the electron package is not installed' };
  const path = programPath(folder);
  if (path !== null) return { found: true, path };
  const fault = fetchRuntime(folder, limitMs);
  const fetched = programPath(folder);
  if (fetched !== null) return { found: true, path: fetched };
  return {
    found: false,
    reason: `the Electron runtime could not be fetched (${fault ?? 'it is incomplete'})`,
  };
}
