const defaultRuns = 7;

/** Median wall time of a piece of work over several runs, ms; one run before them warms up and is not counted. */
export async function medianMs(work: () => unknown, runs = defaultRuns): Promise<number> {
  await work();
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)]!;
}
