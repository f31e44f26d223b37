import { writeFileSync } from 'node:fs';
import { historiesPerS } from './histories.ts';
import { runLoopNsPerStep } from './run-loop.ts';
import { startMs } from './start.ts';
import { trackFigures } from './track.ts';
import { workbenchTimes } from './workbench.ts';

/*
 * Measures and prints; asserts nothing. `npm run bench -- --json FILE` writes the same figures to a file.
 */
const figures: Record<string, number> = {
  // Before all that fills the memory.
  ...(await trackFigures()),
  startMs: await startMs(),
  runLoopNsPerStep: await runLoopNsPerStep(),
  ...(await historiesPerS()),
  ...(await workbenchTimes()),
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
