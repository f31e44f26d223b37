import type { BuiltFolders } from '../built-folders.ts';
import { runLoopback } from '../loopback/run.ts';
import { chooseHost, type Circumstances } from './choose-host.ts';
import { runElectron } from './run-electron.ts';

export interface StartOptions {
  readonly circumstances: Circumstances;
  readonly folders: BuiltFolders;
  readonly openBrowser: (address: string) => Promise<unknown>;
}

async function startLoopbackHost({ circumstances, folders, openBrowser }: StartOptions): Promise<void> {
  const address = await runLoopback(folders);
  if (!circumstances.hasDisplay) return;
  await openBrowser(address).catch(() =>
    console.log('No browser could be opened: open the address yourself.'),
  );
}

async function startWindow(program: string, options: StartOptions): Promise<void> {
  const { exitCode, neverOpened } = await runElectron(program, options.folders.project);
  if (!neverOpened || options.circumstances.wish === 'electron') {
    process.exitCode = exitCode;
    return;
  }
  console.log(`No window: it ended at once (code ${exitCode}). A browser takes its place.`);
  await startLoopbackHost(options);
}

/** Starts the host the circumstances allow, and says in one line why it is not the window. */
export async function startHost(options: StartOptions): Promise<void> {
  const choice = chooseHost(options.circumstances);
  switch (choice.host) {
    case 'none':
      throw new Error(choice.why);
    case 'electron':
      return startWindow(choice.path, options);
    case 'loopback':
      if (choice.why !== null) console.log(choice.why);
      return startLoopbackHost(options);
  }
}
