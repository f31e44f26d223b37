import { writeFileSync } from 'node:fs';
import { fullScenarioMs } from './full-scenario.ts';
import { historiesPerS } from './histories.ts';
import { kitSearchFigures } from './kit-search.ts';
import { runLoopFigures } from './run-loop.ts';
import { startFigures } from './start.ts';
import { trackFigures } from './track.ts';
import { workbenchTimes } from './workbench.ts';

/*
 * Measures and prints; asserts nothing of what it measures. `npm run bench -- --json FILE` writes the same figures to a file;
 * `--use-factor 1.5` walks the run loop at another use than planned.
 */
const useAt = process.argv.indexOf('--use-factor');
const useFactor = useAt > 0 ? Number(process.argv[useAt + 1]) : 1;
const figures: Record<string, number> = {
  // Before all that fills the memory.
  ...(await trackFigures()),
  ...(await startFigures()),
  ...(await runLoopFigures(useFactor)),
  fullScenarioMs: await fullScenarioMs(),
  ...(await historiesPerS()),
  ...(await workbenchTimes()),
  ...(await kitSearchFigures()),
  peakMiB: process.resourceUsage().maxRSS / 1024,
};

console.table(
  Object.fromEntries(
    Object.entries(figures).map(([name, value]) => [name, { median: Number(value.toPrecision(4)) }]),
  ),
);
const jsonAt = process.argv.indexOf('--json');
const file = process.argv[jsonAt + 1];
if (jsonAt > 0 && file !== undefined) writeFileSync(file, `${JSON.stringify(figures, null, 2)}\n`);
