const defaultRuns = 7;

interface Runs {
  readonly runs?: number;
  /** Done before each run and not counted. */
  readonly before?: () => unknown;
}

/** Median wall time of a piece of work over several runs, ms; one run before them warms up and is not counted. */
export async function medianMs(
  work: () => unknown,
  { runs = defaultRuns, before = () => undefined }: Runs = {},
): Promise<number> {
  const times: number[] = [];
  for (let run = 0; run <= runs; run += 1) {
    await before();
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  return times.slice(1).sort((a, b) => a - b)[Math.floor(runs / 2)]!;
}
