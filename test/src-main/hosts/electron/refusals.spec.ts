import { beforeEach, describe, expect, it, vi } from 'vitest';
import { builtPage } from '../../../../src-main/hosts/electron/page-address.ts';
import { setupNavigation, setupPermissions } from '../../../../src-main/hosts/electron/refusals.ts';
import { createWindow } from '../../../../src-main/hosts/electron/window.ts';
import { BrowserWindow, cancellable, resetElectron, session } from '../../../support/electron-double.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

function confinedContents() {
  setupNavigation(builtPage);
  createWindow('preload.cjs');
  const [window] = BrowserWindow.windows;
  if (window === undefined) throw new Error('No window was made.');
  return window.webContents;
}

describe('the confinement of the window', () => {
  beforeEach(resetElectron);

  it.each(['https://elsewhere.test/', 'file:///etc/passwd', 'chargewright://app/other.html', 'javascript:0'])(
    'denies navigation and redirection to %s',
    (url) => {
      const contents = confinedContents();
      for (const kind of ['will-frame-navigate', 'will-redirect']) {
        const event = cancellable({ url });
        contents.emit(kind, event);
        expect([kind, event.prevented]).toEqual([kind, true]);
      }
    },
  );

  it('denies every further window', () => {
    const contents = confinedContents();
    expect(contents.openHandler({ url: 'https://elsewhere.test/' })).toEqual({ action: 'deny' });
    expect(contents.openHandler({ url: builtPage.url })).toEqual({ action: 'deny' });
  });

  it('denies an embedded page', () => {
    const event = cancellable();
    confinedContents().emit('will-attach-webview', event);
    expect(event.prevented).toBe(true);
  });

  it('allows the page to be loaded again', () => {
    const event = cancellable({ url: 'chargewright://app/#tours' });
    confinedContents().emit('will-frame-navigate', event);
    expect(event.prevented).toBe(false);
  });
});

describe('the permissions of the page', () => {
  beforeEach(resetElectron);

  it.each(['media', 'geolocation', 'notifications', 'clipboard-read', 'usb', 'openExternal'])(
    'are refused for %s',
    (permission) => {
      setupPermissions(builtPage);
      const answers: boolean[] = [];
      session.defaultSession.request(null, permission, (granted) => answers.push(granted));
      expect(answers).toEqual([false]);
    },
  );

  it('are refused when only checked, and for devices', () => {
    setupPermissions(builtPage);
    expect([session.defaultSession.check(), session.defaultSession.device()]).toEqual([false, false]);
  });

  it.each([
    ['https://elsewhere.test/file.csv', true],
    ['blob:https://elsewhere.test/1234', true],
    ['data:text/csv,1', true],
    ['blob:chargewright://app/1234', false],
  ])('for a download from %s are refused: %s', (url, refused) => {
    setupPermissions(builtPage);
    const event = cancellable();
    session.defaultSession.emit('will-download', event, { getURL: () => url });
    expect(event.prevented).toBe(refused);
  });
});
