import { beforeEach, describe, expect, it, vi } from 'vitest';
import { setupSingleInstance } from '../../../../src-main/hosts/electron/single-instance.ts';
import { createWindow } from '../../../../src-main/hosts/electron/window.ts';
import { app, BrowserWindow, resetElectron } from '../../../support/electron-double.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

describe('the single instance', () => {
  beforeEach(resetElectron);

  it('quits when another one runs already', () => {
    app.holdsLock = false;
    expect(setupSingleInstance()).toBe(false);
    expect(app.done).toEqual(['quit']);
    expect(app.listenerCount('second-instance')).toBe(0);
  });

  it('survives a second start before its window exists', () => {
    setupSingleInstance();
    expect(() => app.emit('second-instance')).not.toThrow();
  });

  it('comes forward when it is started again', () => {
    expect(setupSingleInstance()).toBe(true);
    createWindow('preload.cjs');
    app.emit('second-instance');
    expect(BrowserWindow.windows[0]?.done).toEqual(['focus']);
    expect(app.done).toEqual([]);
  });

  it('comes forward from the task bar too', () => {
    setupSingleInstance();
    createWindow('preload.cjs');
    const [window] = BrowserWindow.windows;
    if (window !== undefined) window.minimized = true;
    app.emit('second-instance');
    expect(window?.done).toEqual(['restore', 'focus']);
  });
});
