import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createWorkerPool } from '../workers/worker-pool.ts';
import { openWorkbench } from '../workbench/open.ts';
import { readVersion } from './app-version.ts';
import { builtFolders } from './built-folders.ts';
import { terminalDesk } from './demo/file-desk.ts';
import { runDemo } from './demo/run.ts';
import { openFaultBook } from './fault-book.ts';
import { runOrExit } from './run-or-exit.ts';

const { project, worker } = builtFolders(import.meta.dirname);
const dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-demo-'));

// A reader such as `head` may close the pipe early: that ends the printing, not the demo.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code !== 'EPIPE') throw fault;
});

function print(text: string): void {
  console.log(text);
}

await runOrExit('The demo failed', async () => {
  const files = terminalDesk(join(project, 'demo-output'), print);
  const version = readVersion(project);
  const workbench = openWorkbench({
    dataFolder,
    host: 'loopback',
    version,
    files,
    faults: openFaultBook(dataFolder),
    crew: createWorkerPool(worker),
  });
  try {
    await runDemo(workbench.handlers, print);
  } finally {
    workbench.close();
  }
});
rmSync(dataFolder, { recursive: true, force: true });
