import { app, dialog } from 'electron';
import { openWorkbench } from '../../workbench/open.ts';
import { createWorkerPool } from '../../workers/worker-pool.ts';
import { readVersion } from '../app-version.ts';
import type { BuiltFolders } from '../built-folders.ts';
import { openFaultBook } from '../fault-book.ts';
import { reportProcessFaults } from '../process-faults.ts';
import { setupCalls } from './calls.ts';
import { dialogDesk } from './file-desk.ts';
import { setupMenu } from './menu.ts';
import { builtPage, type PageAddress } from './page-address.ts';
import { setupPage } from './page-scheme.ts';
import { setupPermissions } from './refusals.ts';
import { surviveCrashes } from './renderer-faults.ts';
import { createWindow } from './window.ts';

export interface ReadinessOptions {
  readonly folders: BuiltFolders;
  readonly dataFolder: string;
  readonly page: PageAddress;
}

async function openApp({ folders, dataFolder, page }: ReadinessOptions): Promise<void> {
  setupPermissions(page);
  setupMenu();
  if (page === builtPage) setupPage(folders.renderer);
  const window = createWindow(folders.preload);
  const faults = openFaultBook(dataFolder);
  reportProcessFaults(process, faults.report);
  surviveCrashes(window, page, faults.report);
  const version = readVersion(folders.project);
  const workbench = openWorkbench({
    dataFolder,
    host: 'electron',
    version,
    files: dialogDesk(window),
    faults,
    crew: createWorkerPool(folders.worker),
  });
  app.once('will-quit', () => workbench.close());
  setupCalls({ window, page, handlers: workbench.handlers, report: faults.report });
  await window.loadURL(page.url);
}

function giveUp(fault: unknown): void {
  dialog.showErrorBox('Chargewright could not start', fault instanceof Error ? fault.message : String(fault));
  app.exit(1);
}

/** Opens the window once Chromium is ready. Not awaited: it is not ready before this entry file has ended. */
export function setupReadiness(options: ReadinessOptions): void {
  // One window, one piece of work: closing it ends the program on every platform.
  app.on('window-all-closed', () => app.quit());
  void app
    .whenReady()
    .then(() => openApp(options))
    .catch(giveUp);
}
