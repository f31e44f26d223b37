import { app, BrowserWindow } from 'electron';

function comeForward(): void {
  const [window] = BrowserWindow.getAllWindows();
  if (window === undefined) return;
  if (window.isMinimized()) window.restore();
  window.focus();
}

/** True for the first instance; a second one brings the first forward and quits. */
export function setupSingleInstance(): boolean {
  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return false;
  }
  app.on('second-instance', comeForward);
  return true;
}
