import { fork } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Findings, SecondFindings } from '../support/play-built-electron.ts';

const project = resolve(import.meta.dirname, '../..');

/** Starts the built main entry in a process of its own, and answers what was found there. */
function play(dataFolder: string, ...behaviour: readonly string[]): Promise<unknown> {
  const script = join(project, 'test/support/play-built-electron.ts');
  const child = fork(script, behaviour, {
    env: { ...process.env, CHARGEWRIGHT_DATA: dataFolder },
    stdio: ['ignore', 'inherit', 'pipe', 'ipc'],
    execArgv: [],
  });
  return new Promise((done, fail) => {
    let said = '';
    child.stderr?.on('data', (data: Buffer) => (said += data.toString()));
    child.once('message', done);
    child.once('exit', (code) => fail(new Error(`The built program ended with ${code}: ${said}`)));
  });
}

/** The real window is left out where its runtime is missing; this runs the same built files everywhere, as far as they go. */
describe('the built bundles of the window', () => {
  let folder: string;
  let found: Findings;
  let second: SecondFindings;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'chargewright-built-'));
    found = (await play(join(folder, 'data'), 'life', join(folder, 'sheet.pdf'))) as Findings;
    second = (await play(join(folder, 'second'), 'second')) as SecondFindings;
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('end a second instance before it opens anything', () => {
    expect(second).toEqual({ done: ['quit'], windows: 0 });
    expect(existsSync(join(folder, 'second/catalogue.sqlite3'))).toBe(false);
  });

  it('refuse a call that is none, and a frame that is not the page', () => {
    expect(found.unknown).toMatchObject({ ok: false, error: { code: 'unknown-call' } });
    expect(found.fromElsewhere).toMatchObject({ ok: false, error: { code: 'forbidden' } });
  });

  it('name a preload that runs in the sandbox and offers the one bridge', () => {
    expect(found.preload).toBe(join(project, 'out/preload/preload.cjs'));
    expect(found.bridges).toEqual(['chargewright']);
  });

  it('serve the page with its policy and every part it names, and nothing from beside it', () => {
    const [index, ...parts] = found.served;
    const outside = parts.pop();
    expect(index).toMatchObject({ status: 200, type: 'text/html; charset=utf-8' });
    expect(found.policy).toContain("default-src 'none'");
    expect(parts.filter(({ status, length }) => status !== 200 || length === 0)).toEqual([]);
    const types = new Set(parts.map(({ type }) => type?.split(';')[0]));
    expect([...types].toSorted()).toEqual(['font/woff2', 'image/svg+xml', 'text/css', 'text/javascript']);
    expect(outside).toMatchObject({ status: 404 });
  });

  it('load that page, with the files of Chromium in a folder of their own', () => {
    expect(found.schemes).toEqual(['chargewright']);
    expect(found.loaded).toEqual(['load chargewright://app/']);
    expect(found.userData).toBe(join(folder, 'data/window'));
    expect(found.errors).toEqual([]);
  });

  it('answer a call of the bridge from the real catalogue', () => {
    const { version } = JSON.parse(readFileSync(join(project, 'package.json'), 'utf8')) as {
      version: string;
    };
    expect(found.about).toMatchObject({
      ok: true,
      value: { host: 'electron', version, dataFolder: join(folder, 'data') },
    });
  });

  it('compare in worker threads, and save the sheet where the dialog says', () => {
    const path = join(folder, 'sheet.pdf');
    expect(found.sheet).toMatchObject({ ok: true, value: { as: 'saved', path } });
    expect(readFileSync(path).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  });

  it('come forward when started again, and close the catalogue when they end', () => {
    expect(found.cameForward).toBe(true);
    expect([found.openBeforeQuit, found.openAfterQuit]).toEqual([true, false]);
  });
});
