import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Circumstances, Launcher } from '../../../../src-main/hosts/start/choose-host.ts';
import { startHost } from '../../../../src-main/hosts/start/start-host.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const none: Launcher = { found: false, reason: 'the runtime is missing' };

/** Starts a host in its own folders, and stops what listens for signals when the test ends. */
function setup(changes: Partial<Circumstances>, openBrowser: (address: string) => Promise<unknown>) {
  const project = temporaryFolder({
    'package.json': '{"version": "1.2.3"}',
    'renderer/index.html': '<!doctype html>',
  });
  vi.stubEnv('CHARGEWRIGHT_DATA', join(project, 'data'));
  const folders = { project, renderer: join(project, 'renderer'), preload: '', worker: '' };
  const circumstances: Circumstances = {
    wish: undefined,
    platform: 'linux',
    hasDisplay: true,
    isRoot: false,
    findLauncher: () => none,
    ...changes,
  };
  return startHost({ circumstances, folders, openBrowser });
}

function programThatExits(code: number): Launcher {
  const script = `#!${process.execPath}\nprocess.exit(${code});\n`;
  const path = join(temporaryFolder({ 'program.cjs': script }), 'program.cjs');
  chmodSync(path, 0o755);
  return { found: true, path };
}

describe('starting a host', () => {
  const exit = vi.spyOn(process, 'exit');
  let before: NodeJS.SignalsListener[] = [];
  let lines: string[] = [];
  let opened: string[] = [];
  const openBrowser = (address: string): Promise<void> => {
    opened.push(address);
    return Promise.resolve();
  };

  beforeEach(() => {
    before = process.listeners('SIGINT');
    lines = [];
    opened = [];
    vi.spyOn(console, 'log').mockImplementation((line: string) => void lines.push(line));
    exit.mockImplementation(() => undefined as never);
  });

  afterEach(async () => {
    const added = process.listeners('SIGINT').filter((listener) => !before.includes(listener));
    for (const listener of added) listener('SIGINT');
    if (added.length > 0) await vi.waitFor(() => expect(exit).toHaveBeenCalledWith(0));
    process.exitCode = undefined;
    vi.unstubAllEnvs();
    vi.resetAllMocks();
  });

  it('fails with the reason where the wish is impossible', async () => {
    await expect(setup({ wish: 'electron' }, openBrowser)).rejects.toThrow(
      'No window: the runtime is missing.',
    );
    expect([lines, opened]).toEqual([[], []]);
  });

  it('keeps running when no browser can be opened', async () => {
    await setup({}, () => Promise.reject(new Error('no browser')));
    expect(lines.at(-1)).toBe('No browser could be opened: open the address yourself.');
  });

  it('prints the reason, then the address, and opens it', async () => {
    await setup({}, openBrowser);
    expect(lines).toEqual([
      'No window: the runtime is missing. A browser takes its place.',
      `Chargewright is open at ${String(opened[0])}`,
    ]);
  });

  it('opens no browser without a display', async () => {
    await setup({ hasDisplay: false }, openBrowser);
    expect(lines.at(-1)).toMatch(/^Chargewright is open at http:/);
    expect(opened).toEqual([]);
  });

  it('falls back when the window ends at once', async () => {
    await setup({ findLauncher: () => programThatExits(7) }, openBrowser);
    expect(lines[0]).toBe('No window: it ended at once (code 7). A browser takes its place.');
    expect(opened).toHaveLength(1);
  });

  it('does not fall back when the window was asked for', async () => {
    await setup({ wish: 'electron', findLauncher: () => programThatExits(7) }, openBrowser);
    expect([process.exitCode, lines]).toEqual([7, []]);
  });

  it('starts nothing after a window that was closed', async () => {
    await setup({ findLauncher: () => programThatExits(0) }, openBrowser);
    expect([process.exitCode, lines]).toEqual([0, []]);
  });
});
