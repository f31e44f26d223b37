// Loads the double before modules are reset, so that every later import of it is this one.
import 'electron';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { app, BrowserWindow, protocol, resetElectron } from '../../../support/electron-double.ts';
import { temporaryFolder } from '../temporary-folder.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

async function startMain(): Promise<string> {
  const dataFolder = temporaryFolder();
  vi.stubEnv('CHARGEWRIGHT_DATA', dataFolder);
  vi.resetModules();
  await import('../../../../src-main/hosts/electron/main.ts');
  return dataFolder;
}

describe('the start of the Electron host', () => {
  beforeEach(resetElectron);
  afterEach(() => vi.unstubAllEnvs());

  it('opens nothing when another instance runs already', async () => {
    app.holdsLock = false;
    await startMain();
    await Promise.resolve();
    expect(app.done).toEqual(['quit']);
    expect(BrowserWindow.windows).toEqual([]);
  });

  it('sets folder and scheme before Chromium is ready', async () => {
    // A second instance stops there, so what is seen was done before readiness.
    app.holdsLock = false;
    const dataFolder = await startMain();
    expect(app.paths.get('userData')).toBe(join(dataFolder, 'window'));
    expect(protocol.schemes.map(({ scheme }) => scheme)).toEqual(['chargewright']);
    expect(app.listenerCount('web-contents-created')).toBe(1);
  });
});
