import { openWorkbench } from '../../workbench/open.ts';
import { createWorkerPool } from '../../workers/worker-pool.ts';
import { readVersion } from '../app-version.ts';
import type { BuiltFolders } from '../built-folders.ts';
import { ownDataFolder } from '../data-folder.ts';
import { openFaultBook } from '../fault-book.ts';
import { reportProcessFaults } from '../process-faults.ts';
import { pageDesk } from './file-desk.ts';
import { readPort } from './port.ts';
import { startLoopback } from './server.ts';
import { stopOnSignals } from './stop.ts';

/** Opens the catalogue, serves it, and prints where; answers the address, once the browser can be sent there. */
export async function runLoopback(folders: BuiltFolders): Promise<string> {
  const dataFolder = ownDataFolder();
  const port = readPort(process.env['CHARGEWRIGHT_PORT']);
  const version = readVersion(folders.project);
  const faults = openFaultBook(dataFolder);
  reportProcessFaults(process, faults.report);
  const workbench = openWorkbench({
    dataFolder,
    host: 'loopback',
    version,
    files: pageDesk,
    faults,
    crew: createWorkerPool(folders.worker),
  });
  try {
    const loopback = await startLoopback({
      workbench,
      rendererFolder: folders.renderer,
      port,
      report: faults.report,
      onNextAddress: (address) => console.log(`For another browser, Chargewright is open at ${address}`),
    });
    stopOnSignals(process, async () => {
      await loopback.close();
      workbench.close();
    });
    console.log(`Chargewright is open at ${loopback.address}`);
    return loopback.address;
  } catch (fault) {
    workbench.close();
    throw fault;
  }
}
