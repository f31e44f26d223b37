import { BrowserWindow } from 'electron';
import { askBeforeLeaving } from './leaving.ts';

/** Size in device-independent pixels: the smallest is what the widest table needs beside the navigation. */
const size = { width: 1280, height: 800, minWidth: 1024, minHeight: 700 };

/** The one window, hidden until its page is drawn, with a page that can reach nothing but the bridge. */
export function createWindow(preload: string): BrowserWindow {
  const window = new BrowserWindow({
    ...size,
    title: 'Chargewright',
    show: false,
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      // The spelling check fetches its dictionaries from the network.
      spellcheck: false,
    },
  });
  askBeforeLeaving(window);
  window.once('ready-to-show', () => window.show());
  return window;
}
