import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { BuiltFolders } from '../../../../src-main/hosts/built-folders.ts';
import { runLoopback } from '../../../../src-main/hosts/loopback/run.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const lines: string[] = [];

function built(
  files: Readonly<Record<string, string>> = { 'renderer/index.html': '<!doctype html>' },
): BuiltFolders {
  const project = temporaryFolder({ 'package.json': '{"version": "1.2.3"}', ...files });
  vi.stubEnv('CHARGEWRIGHT_DATA', join(project, 'data'));
  return {
    project,
    renderer: join(project, 'renderer'),
    preload: join(project, 'preload.cjs'),
    worker: join(project, 'worker.js'),
  };
}

/** Runs the host, and answers how to send it one signal without sending it to the test runner as well. */
async function running(folders: BuiltFolders) {
  const before = process.listeners('SIGINT');
  const address = await runLoopback(folders);
  const [listener] = process.listeners('SIGINT').filter((each) => !before.includes(each));
  return { address, interrupt: () => listener?.('SIGINT') };
}

async function callAbout(address: string): Promise<unknown> {
  const { origin } = new URL(address);
  const opening = await fetch(address, { redirect: 'manual' });
  const [cookie = ''] = opening.headers.getSetCookie();
  const headers = { origin, cookie: cookie.split(';')[0] ?? '', 'content-type': 'application/json' };
  const page = new URL(opening.headers.get('location') ?? '', origin).href;
  return (await fetch(`${page}call/about`, { method: 'POST', headers, body: '{}' })).json();
}

describe('running the loopback host', () => {
  const exit = vi.spyOn(process, 'exit');

  beforeEach(() => {
    lines.length = 0;
    vi.spyOn(console, 'log').mockImplementation((line: string) => void lines.push(line));
    exit.mockImplementation(() => undefined as never);
  });
  afterEach(() => {
    vi.unstubAllEnvs();
    vi.resetAllMocks();
  });

  it('prints no address for a port that is none', async () => {
    const folders = built();
    vi.stubEnv('CHARGEWRIGHT_PORT', 'eighty');
    await expect(runLoopback(folders)).rejects.toThrow('allowed is a whole number');
    expect(lines).toEqual([]);
  });

  it('prints no address for a page that is missing', async () => {
    await expect(runLoopback(built({ 'renderer/other.html': '' }))).rejects.toThrow('npm run build');
    expect(lines).toEqual([]);
  });

  it('prints no address where another has the data folder open, and says which', async () => {
    const folders = built();
    const { interrupt } = await running(folders);
    lines.length = 0;
    await expect(runLoopback(folders)).rejects.toThrow(/open already on .* \(in a browser, process \d+\)/);
    expect(lines).toEqual([]);
    interrupt();
    await vi.waitFor(() => expect(exit).toHaveBeenCalled());
  });

  it('prints one line, serves the catalogue, stops on a signal', async () => {
    const { address, interrupt } = await running(built());
    expect(lines).toEqual([`Chargewright is open at ${address}`]);
    expect(await callAbout(address)).toMatchObject({
      ok: true,
      value: { host: 'loopback', version: '1.2.3' },
    });
    interrupt();
    await vi.waitFor(() => expect(exit).toHaveBeenCalledWith(0));
    await expect(fetch(new URL(address).origin)).rejects.toThrow();
  });

  it('prints the next address once one was used', async () => {
    const { address, interrupt } = await running(built());
    await fetch(address, { redirect: 'manual' });
    expect(lines[1]).toMatch(
      /^For another browser, Chargewright is open at http:\/\/127\.0\.0\.1:\d+\/open\?key=/,
    );
    expect(lines[1]).not.toContain(address);
    interrupt();
    await vi.waitFor(() => expect(exit).toHaveBeenCalled());
  });
});
