import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** What is on the heap and still needed, bytes: the collector runs first. */
export function heapHeld(): number {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
  return process.memoryUsage().heapUsed;
}
