import { existsSync, readdirSync, rmSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { _electron, type ElectronApplication, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chooseHost } from '../../src-main/hosts/start/choose-host.ts';
import { hasDisplay } from '../../src-main/hosts/start/circumstances.ts';
import { electronFolder, programPath } from '../../src-main/hosts/start/electron-runtime.ts';

const project = resolve(import.meta.dirname, '../..');

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
const program = choice.host === 'electron' ? choice.path : null;
const leftOut = choice.host === 'none' ? ` (left out: ${choice.why})` : '';

describe.skipIf(program === null)(`the built window${leftOut}`, () => {
  let dataFolder: string;
  let running: ElectronApplication;
  let page: Page;

  beforeAll(async () => {
    dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-window-'));
    running = await _electron.launch({
      executablePath: program ?? '',
      args: [project],
      env: { ...process.env, CHARGEWRIGHT_DATA: dataFolder },
      chromiumSandbox: true,
    });
    page = await running.firstWindow();
    await page.waitForLoadState();
  });

  afterAll(async () => {
    await running.close();
    rmSync(dataFolder, { recursive: true, force: true });
  });

  it('gives the page the bridge and no Node', async () => {
    expect(
      await page.evaluate(() => ['require' in window, 'process' in window, 'chargewright' in window]),
    ).toEqual([false, false, true]);
  });

  it('stays on its page when a script leads away', async () => {
    await page.evaluate(() => {
      location.href = 'https://elsewhere.test/';
    });
    expect(page.url()).toMatch(/^chargewright:\/\/app\//);
  });

  it('opens no second window', async () => {
    expect(await page.evaluate(() => window.open('https://elsewhere.test/') === null)).toBe(true);
    expect(running.windows()).toHaveLength(1);
  });

  it('shows the demo tour and keeps it in the catalogue', async () => {
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(existsSync(join(dataFolder, 'catalogue.sqlite3'))).toBe(true);
  });

  it('keeps the files of Chromium in their own folder', () => {
    expect(readdirSync(dataFolder)).toContain('window');
  });
});
