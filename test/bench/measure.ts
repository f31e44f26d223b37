const defaultRuns = 7;

interface Runs {
  readonly runs?: number;
  /** Done before each run and not counted. */
  readonly before?: () => unknown;
}

/** Median wall time of a piece of work over several runs, ms; one run before them warms up and is not counted. */
export function medianMs(
  work: () => unknown,
  { runs = defaultRuns, before = () => undefined }: Runs = {},
): Promise<number> {
  return medianOf(async () => {
    await before();
    const start = performance.now();
    await work();
    return performance.now() - start;
  }, runs);
}

/** Median of what a measurement gives; the first, which warms up, is not counted. */
export async function medianOf(measure: () => Promise<number>, runs: number): Promise<number> {
  const found: number[] = [];
  for (let run = 0; run <= runs; run += 1) found.push(await measure());
  return found.slice(1).sort((a, b) => a - b)[Math.floor(runs / 2)]!;
}
