import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { ScenarioResult } from '../../shared-types/comparison.ts';
import { expectedWalks, type ScenarioJob } from '../workbench/scenario-job.ts';
import type { SimulatedRun, Simulator } from '../workbench/simulator.ts';
import type { WorkerReport } from './reports.ts';

/** A job on its way: waiting, or in the hands of a worker. */
interface Task {
  readonly job: ScenarioJob;
  readonly onWalks: (walks: number) => void;
  readonly onDone: (result: ScenarioResult) => void;
  readonly onFault: (fault: Error) => void;
  readonly onClosed: () => void;
}

/**
 * Simulates scenarios in worker threads, as many at a time as the computer has cores. Workers are started when they are
 * first needed and kept. To cancel a run its workers are ended, whatever they are doing; new ones take their place.
 *
 * @param workerFile the built `scenario-worker`
 */
export function createScenarioPool(workerFile: string | URL, size = availableParallelism()): Simulator {
  const idle: Worker[] = [];
  const busy = new Map<Worker, Task>();
  const waiting: Task[] = [];

  function employ(): Worker {
    const worker = new Worker(workerFile);
    worker.on('message', (report: WorkerReport) => hear(worker, report));
    worker.on('error', (fault: Error) => lose(worker, fault));
    return worker;
  }

  function hear(worker: Worker, report: WorkerReport): void {
    const task = busy.get(worker);
    if (task === undefined) return;
    if (report.as === 'walked') {
      task.onWalks(report.walks);
      return;
    }
    busy.delete(worker);
    idle.push(worker);
    // An idle worker keeps no program from ending.
    worker.unref();
    task.onDone(report.result);
    hand();
  }

  function lose(worker: Worker, fault: Error): void {
    const task = busy.get(worker);
    busy.delete(worker);
    task?.onFault(fault);
    hand();
  }

  function hand(): void {
    while (waiting.length > 0 && busy.size < size) {
      const task = waiting.shift()!;
      const worker = idle.pop() ?? employ();
      busy.set(worker, task);
      worker.ref();
      worker.postMessage(task.job);
    }
  }

  function drop(mine: ReadonlySet<Task>): void {
    for (const [worker, task] of busy) {
      if (!mine.has(task)) continue;
      busy.delete(worker);
      void worker.terminate();
    }
    waiting.splice(0, waiting.length, ...waiting.filter((task) => !mine.has(task)));
    hand();
  }

  return {
    start: (ground, scenarios, onProgress) => {
      const jobs = scenarios.map((scenario) => ({ ...ground, scenario }));
      const { run, tasks } = gather(jobs, onProgress, drop);
      waiting.push(...tasks);
      hand();
      return run;
    },
    close: () => {
      for (const task of [...waiting, ...busy.values()]) task.onClosed();
      for (const worker of [...idle, ...busy.keys()]) void worker.terminate();
      idle.length = 0;
      busy.clear();
      waiting.length = 0;
    },
  };
}

/** A job cannot be nearly done for longer than this share of its bar. */
const mostBeforeDone = 0.99;

/** The tasks of a run, and the promise of their results in order. */
function gather(
  jobs: readonly ScenarioJob[],
  onProgress: (share: number) => void,
  drop: (tasks: ReadonlySet<Task>) => void,
): { readonly run: SimulatedRun; readonly tasks: readonly Task[] } {
  const { promise, resolve, reject } = Promise.withResolvers<readonly ScenarioResult[] | null>();
  const results = new Map<number, ScenarioResult>();
  const shares = new Float64Array(jobs.length);
  const advance = (index: number, share: number): void => {
    shares[index] = share;
    onProgress(shares.reduce((sum, each) => sum + each, 0) / jobs.length);
  };
  const tasks = jobs.map((job, index): Task => ({
    job,
    onWalks: (walks) => advance(index, Math.min(mostBeforeDone, walks / expectedWalks(job))),
    onDone: (result) => {
      results.set(index, result);
      advance(index, 1);
      if (results.size === jobs.length) resolve(jobs.map((_, at) => results.get(at)!));
    },
    onFault: (fault) => {
      reject(fault);
      drop(new Set(tasks));
    },
    onClosed: () => resolve(null),
  }));
  if (jobs.length === 0) resolve([]);
  return {
    tasks,
    run: {
      results: promise,
      cancel: () => {
        resolve(null);
        drop(new Set(tasks));
      },
    },
  };
}
