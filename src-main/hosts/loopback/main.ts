import { builtFolders } from '../built-folders.ts';
import { runOrExit } from '../run-or-exit.ts';
import { runLoopback } from './run.ts';

await runOrExit('Chargewright could not start', async () => {
  await runLoopback(builtFolders(import.meta.dirname));
});
