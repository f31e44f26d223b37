import { parentPort } from 'node:worker_threads';
import { jobHand, type JobOrder } from '../workbench/jobs.ts';
import type { WorkerReport } from './reports.ts';

/* A worker thread: does one order after the other, says now and then how far it is, then what came out. */

const port = parentPort;
if (port === null) throw new Error('The worker runs as a worker thread only.');
const doOrder = jobHand();
const report = (what: WorkerReport): void => port.postMessage(what);

port.on('message', (order: JobOrder) => {
  const output = doOrder(order, (share) => report({ as: 'under-way', share }));
  report({ as: 'done', output });
});
