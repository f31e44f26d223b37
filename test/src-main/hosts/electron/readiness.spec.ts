import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { builtFolders } from '../../../../src-main/hosts/built-folders.ts';
import { builtPage, pageAddress } from '../../../../src-main/hosts/electron/page-address.ts';
import { setupReadiness } from '../../../../src-main/hosts/electron/readiness.ts';
import { setupNavigation } from '../../../../src-main/hosts/electron/refusals.ts';
import {
  app,
  BrowserWindow,
  cancellable,
  dialog,
  ipcRenderer,
  Menu,
  protocol,
  resetElectron,
} from '../../../support/electron-double.ts';
import { temporaryFolder } from '../temporary-folder.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

const builtFiles = { 'out/renderer/index.html': '<!doctype html>' };

function start(files: Readonly<Record<string, string>> = builtFiles, page = builtPage) {
  const project = temporaryFolder({ 'package.json': '{"version": "1.2.3"}', ...files });
  const dataFolder = join(project, 'data');
  const preload = join(project, 'out/preload/preload.cjs');
  setupNavigation(page);
  setupReadiness({
    folders: {
      project,
      renderer: join(project, 'out/renderer'),
      preload,
      worker: join(project, 'out/main/worker.js'),
    },
    dataFolder,
    page,
  });
  return { dataFolder };
}

function opened(): Promise<readonly string[]> {
  return vi.waitFor(() => {
    expect(BrowserWindow.windows[0]?.done).toContainEqual(expect.stringMatching(/^load/));
    return BrowserWindow.windows[0]?.done ?? [];
  });
}

describe('the Electron host, once it is ready', () => {
  beforeEach(resetElectron);
  // Closes the catalogue before its folder is removed.
  afterEach(() => app.emit('will-quit'));

  it('says that another has its data folder, and exits', async () => {
    const { dataFolder } = start();
    await opened();
    setupReadiness({ folders: builtFolders(join(dataFolder, '../out/main')), dataFolder, page: builtPage });
    await vi.waitFor(() => expect(app.done).toEqual(['exit 1']));
    expect(dialog.errors).toEqual([
      expect.stringMatching(/^Chargewright could not start: Chargewright is open already on .*in its window/),
    ]);
  });

  it('shows its page where the catalogue can not be opened, which says why', async () => {
    start({ ...builtFiles, data: 'a file where the folder should be' });
    await opened();
    expect(await ipcRenderer.invoke('chargewright:call', 'catalogue.state', {})).toMatchObject({
      ok: true,
      value: { trouble: { fault: 'unreachable' } },
    });
  });

  it('says how to build a page that is missing', async () => {
    start({ 'out/renderer/other.html': '' });
    await vi.waitFor(() => expect(app.done).toEqual(['exit 1']));
    expect(dialog.errors).toEqual([expect.stringContaining('npm run build')]);
  });

  it('loads the built page into one confined window', async () => {
    start();
    expect(await opened()).toEqual(['load chargewright://app/']);
    expect(BrowserWindow.windows).toHaveLength(1);
    const event = cancellable({ url: 'https://elsewhere.test/' });
    BrowserWindow.windows[0]?.webContents.emit('will-frame-navigate', event);
    expect(event.prevented).toBe(true);
    expect(Menu.shown.length).toBeGreaterThan(0);
  });

  it('answers calls from the real catalogue', async () => {
    const { dataFolder } = start();
    await opened();
    expect(await ipcRenderer.invoke('chargewright:call', 'about', {})).toMatchObject({
      ok: true,
      value: { host: 'electron', version: '1.2.3', dataFolder },
    });
    expect(existsSync(join(dataFolder, 'catalogue.sqlite3'))).toBe(true);
  });

  it('ends with its window and closes the catalogue', async () => {
    const { dataFolder } = start();
    await opened();
    // SQLite keeps this file while the catalogue is open, and removes it when the last connection closes.
    const log = join(dataFolder, 'catalogue.sqlite3-wal');
    expect(existsSync(log)).toBe(true);
    app.emit('window-all-closed');
    expect(app.done).toEqual(['quit']);
    app.emit('will-quit');
    expect(existsSync(log)).toBe(false);
  });

  it('serves no built page beside the development server', async () => {
    start(builtFiles, pageAddress('http://localhost:5173'));
    expect(await opened()).toEqual(['load http://localhost:5173/']);
    expect(protocol.handlers.size).toBe(0);
  });
});
