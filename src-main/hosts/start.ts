import open from 'open';
import { builtFolders } from './built-folders.ts';
import { runOrExit } from './run-or-exit.ts';
import { ownCircumstances } from './start/circumstances.ts';
import { startHost } from './start/start-host.ts';

await runOrExit('Chargewright could not start', () =>
  startHost({
    circumstances: ownCircumstances(),
    folders: builtFolders(import.meta.dirname),
    openBrowser: open,
  }),
);
