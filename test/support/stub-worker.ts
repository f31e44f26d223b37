import { BroadcastChannel, parentPort, threadId } from 'node:worker_threads';
import type { JobOrder } from '../../src-main/workbench/jobs.ts';

/*
 * A worker that does as the label of its scenario says: `throw` throws, `hang` never answers, all else answers at once. While
 * it lives it says so on a channel.
 */

/** How often a stub worker says that it is alive. */
const aliveEveryMs = 10;

const port = parentPort!;
const channel = new BroadcastChannel('stub-workers');
setInterval(() => channel.postMessage(threadId), aliveEveryMs).unref();

/** Keeps the thread from everything else, a message that ends it included. */
function hang(): never {
  const never = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
  for (;;) {
    channel.postMessage(threadId);
    Atomics.wait(never, 0, 0, aliveEveryMs);
  }
}

port.on('message', ({ input: { scenario, ground } }: JobOrder<'scenario'>) => {
  if (scenario.label === 'throw') throw new Error('The stub was told to throw.');
  if (scenario.label === 'hang') hang();
  const output = { id: scenario.id, label: `${scenario.label} of ${ground.groundId}` };
  port.postMessage({ as: 'done', output });
});
