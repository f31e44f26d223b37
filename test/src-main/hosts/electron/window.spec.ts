import { beforeEach, describe, expect, it, vi } from 'vitest';
import { createWindow } from '../../../../src-main/hosts/electron/window.ts';
import { BrowserWindow, resetElectron } from '../../../support/electron-double.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

describe('the window', () => {
  beforeEach(resetElectron);

  it('gives its page no Node, no spelling check, no webview', () => {
    createWindow('/out/preload/preload.cjs');
    expect(BrowserWindow.windows[0]?.options.webPreferences).toEqual({
      preload: '/out/preload/preload.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    });
  });

  it('stays hidden until its page is drawn', () => {
    createWindow('preload.cjs');
    const [window] = BrowserWindow.windows;
    expect([window?.options['show'], window?.done]).toEqual([false, []]);
    window?.emit('ready-to-show');
    expect(window?.done).toEqual(['show']);
  });

  it('has room for the screens and keeps it', () => {
    createWindow('preload.cjs');
    expect(BrowserWindow.windows[0]?.options).toMatchObject({
      width: 1280,
      height: 800,
      minWidth: 1024,
      minHeight: 700,
    });
  });
});
