import { app, session, type WebContents } from 'electron';
import { isPage, type PageAddress } from './page-address.ts';

function confine(contents: WebContents, page: PageAddress): void {
  // Reloading is a navigation to the page itself; any other would put a stranger beside our bridge.
  contents.on('will-frame-navigate', (details) => {
    if (!isPage(details.url, page)) details.preventDefault();
  });
  contents.on('will-redirect', (details) => {
    if (!isPage(details.url, page)) details.preventDefault();
  });
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

/** Keeps every web contents on our page: no navigation away, no further window, no embedded one. */
export function setupNavigation(page: PageAddress): void {
  app.on('web-contents-created', (_event, contents) => confine(contents, page));
}

/** Chargewright needs no camera, place or notification: all is refused, and every download but the page's own. */
export function setupPermissions(page: PageAddress): void {
  const { defaultSession } = session;
  defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  defaultSession.setPermissionCheckHandler(() => false);
  defaultSession.setDevicePermissionHandler(() => false);
  // A chart's picture and figures are made in the page; the system's own save dialog opens for them.
  defaultSession.on('will-download', (event, item) => {
    if (!item.getURL().startsWith(`blob:${page.origin}/`)) event.preventDefault();
  });
}
