import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { _electron, type ElectronApplication, type Page } from 'playwright-core';
import { beforeAll } from 'vitest';
import { program, project } from './runtime.ts';

/** The built window as it runs, and what a rider and the system do with it. */
export interface RunningWindow {
  readonly page: Page;
  readonly running: ElectronApplication;
  readonly dataFolder: string;
  /** How the program was started, to start it once more. */
  readonly environment: Record<string, string>;
  /** Goes to a screen by its link in the navigation. */
  readonly goTo: (screen: string) => Promise<void>;
  /** Has the next save dialogs answer with this path, as if the rider had chosen it. */
  readonly saveTo: (path: string) => Promise<void>;
  /** Has the next open dialogs answer with this path; null is a dialog that was closed. */
  readonly open: (path: string | null) => Promise<void>;
}

/** How long a rider waits for anything on a screen; the first comparison is among it. */
const patienceMs = 20_000;

function ownEnvironment(dataFolder: string): Record<string, string> {
  const environment = Object.entries(process.env).filter(
    (entry): entry is [string, string] => entry[1] !== undefined && entry[0] !== 'ELECTRON_RUN_AS_NODE',
  );
  return { ...Object.fromEntries(environment), CHARGEWRIGHT_DATA: dataFolder };
}

/** Starts the built window once for a suite, on a data folder of its own with the demo in it. */
export function withWindow(): () => RunningWindow {
  let window: RunningWindow;
  beforeAll(async () => {
    const dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-window-'));
    const environment = ownEnvironment(dataFolder);
    const running = await _electron.launch({
      executablePath: program ?? '',
      args: [project],
      env: environment,
      chromiumSandbox: true,
    });
    const page = await running.firstWindow();
    page.setDefaultTimeout(patienceMs);
    await page.getByRole('table', { name: 'Scorecard' }).waitFor();
    window = {
      page,
      running,
      dataFolder,
      environment,
      goTo: (screen) => page.getByRole('navigation').getByRole('link', { name: screen, exact: true }).click(),
      saveTo: (path) =>
        running.evaluate(({ dialog }, filePath) => {
          dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath });
        }, path),
      open: (path) =>
        running.evaluate(({ dialog }, filePath) => {
          const filePaths = filePath === null ? [] : [filePath];
          dialog.showOpenDialog = () => Promise.resolve({ canceled: filePath === null, filePaths });
        }, path),
    };
    return async () => {
      await running.close();
      rmSync(dataFolder, { recursive: true, force: true });
    };
  });
  return () => window;
}
