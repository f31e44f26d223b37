import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Crew, CrewRun, Watch } from '../workbench/crew.ts';
import type { JobKind, JobOrder, JobOutput } from '../workbench/jobs.ts';
import type { WorkerReport } from './reports.ts';

/** A job on its way: waiting, or in the hands of a worker. */
interface Task {
  readonly order: JobOrder;
  readonly onShare: (share: number) => void;
  readonly onDone: (output: unknown) => void;
  readonly onFault: (fault: Error) => void;
  readonly onClosed: () => void;
}

/**
 * Does jobs in worker threads, as many at a time as the computer has cores. Workers are started when they are first needed
 * and kept. To cancel a run its workers are ended, whatever they are doing; new ones take their place.
 *
 * @param workerFile the built `worker`
 */
export function createWorkerPool(workerFile: string | URL, size = availableParallelism()): Crew {
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
    if (report.as === 'under-way') {
      task.onShare(report.share);
      return;
    }
    busy.delete(worker);
    idle.push(worker);
    // An idle worker keeps no program from ending.
    worker.unref();
    task.onDone(report.output);
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
      worker.postMessage(task.order);
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
    size,
    start: (kind, inputs, watch) => {
      const orders = inputs.map((input) => ({ kind, input }));
      const { run, tasks } = gather(orders, watch, drop);
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

/** The tasks of a run, and the promise of their outputs in order. */
function gather<K extends JobKind>(
  orders: readonly JobOrder<K>[],
  { onProgress, onResult }: Watch<JobOutput<K>>,
  drop: (tasks: ReadonlySet<Task>) => void,
): { readonly run: CrewRun<JobOutput<K>>; readonly tasks: readonly Task[] } {
  const { promise, resolve, reject } = Promise.withResolvers<readonly JobOutput<K>[] | null>();
  const outputs = new Map<number, JobOutput<K>>();
  const shares = new Float64Array(orders.length);
  const advance = (index: number, share: number): void => {
    shares[index] = share;
    onProgress(shares.reduce((sum, each) => sum + each, 0) / orders.length);
  };
  const tasks = orders.map((order, index): Task => ({
    order,
    onShare: (share) => advance(index, share),
    onDone: (answer) => {
      const output = answer as JobOutput<K>;
      outputs.set(index, output);
      onResult?.(output, index);
      advance(index, 1);
      if (outputs.size === orders.length) resolve(orders.map((_, at) => outputs.get(at)!));
    },
    onFault: (fault) => {
      reject(fault);
      drop(new Set(tasks));
    },
    onClosed: () => resolve(null),
  }));
  if (orders.length === 0) resolve([]);
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
