import { resolve } from 'node:path';
import { chooseHost } from '../../src-main/hosts/start/choose-host.ts';
import { hasDisplay } from '../../src-main/hosts/start/circumstances.ts';
import { electronFolder, programPath } from '../../src-main/hosts/start/electron-runtime.ts';

export const project = resolve(import.meta.dirname, '../..');

/** A test fetches nothing: it takes the runtime that is there or none. */
function presentRuntime() {
  const path = programPath(electronFolder() ?? '');
  return path === null
    ? ({ found: false, reason: 'the Electron runtime is not installed' } as const)
    : ({ found: true, path } as const);
}

const choice = chooseHost({
  wish: 'electron',
  platform: process.platform,
  hasDisplay: hasDisplay(process.platform, process.env),
  isRoot: process.getuid?.() === 0,
  findLauncher: presentRuntime,
});

/** The Electron program; null where a window can't be had, which leaves the suites out. */
export const program = choice.host === 'electron' ? choice.path : null;

/** For the title of a suite, so that a run says why it was left out. */
export const whyLeftOut = choice.host === 'none' ? ` (left out: ${choice.why})` : '';
