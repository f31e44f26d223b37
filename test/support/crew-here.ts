import type { Crew } from '../../src-main/workbench/crew.ts';
import { jobHand, type JobOutput } from '../../src-main/workbench/jobs.ts';

/** Does jobs in the test's own thread, one a turn, so that no worker has to start. */
export function crewHere(): Crew {
  const doOrder = jobHand();
  return {
    size: 1,
    start: (kind, inputs, { onProgress, onResult }) => {
      let cancelled = false;
      const work = async () => {
        const outputs: JobOutput<typeof kind>[] = [];
        for (const [index, input] of inputs.entries()) {
          await new Promise((resolve) => setImmediate(resolve));
          if (cancelled) return null;
          const output = doOrder({ kind, input }, () => undefined);
          outputs.push(output);
          onResult?.(output, index);
          onProgress(outputs.length / inputs.length);
        }
        return outputs;
      };
      return { results: work(), cancel: () => void (cancelled = true) };
    },
    close: () => undefined,
  };
}
