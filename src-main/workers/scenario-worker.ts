import { parentPort } from 'node:worker_threads';
import { scenarioWorker, type ScenarioJob } from '../workbench/scenario-job.ts';
import type { WorkerReport } from './reports.ts';

/* A worker thread: takes one job after the other, says now and then how many histories it has walked, then the result. */

/** Walks between two reports: often enough for a bar that moves, seldom enough to cost nothing. */
const walksAReport = 25;

const port = parentPort;
if (port === null) throw new Error('The scenario worker runs as a worker thread only.');
const doJob = scenarioWorker();
const report = (what: WorkerReport): void => port.postMessage(what);

port.on('message', (job: ScenarioJob) => {
  let walks = 0;
  const result = doJob(job, () => {
    walks += 1;
    if (walks % walksAReport === 0) report({ as: 'walked', walks });
  });
  report({ as: 'done', result });
});
