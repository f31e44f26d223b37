import { scenarioWorker } from '../../src-main/workbench/scenario-job.ts';
import type { Simulator } from '../../src-main/workbench/simulator.ts';

/** Simulates in the test's own thread, a scenario a turn, so that no worker has to start. */
export function simulatorHere(): Simulator {
  const doJob = scenarioWorker();
  return {
    start: (ground, scenarios, onProgress) => {
      let cancelled = false;
      const work = async () => {
        const results = [];
        for (const scenario of scenarios) {
          await new Promise((resolve) => setImmediate(resolve));
          if (cancelled) return null;
          results.push(doJob({ ...ground, scenario }, () => undefined));
          onProgress(results.length / scenarios.length);
        }
        return results;
      };
      return { results: work(), cancel: () => void (cancelled = true) };
    },
    close: () => undefined,
  };
}
