import type { PointStore } from './point-store.ts';

/** Points from the first to the last, both included. */
export interface PointRange {
  readonly first: number;
  readonly last: number;
}

/** The runs of points inside a segment over which time never goes back. Both ends carry a time; points between may lack one. */
export function timedRuns({ count, timeS, segmentStarts }: PointStore): PointRange[] {
  const runs: PointRange[] = [];
  segmentStarts.forEach((start, segment) => {
    const end = (segmentStarts[segment + 1] ?? count) - 1;
    let first = timedFrom(timeS, start, end);
    while (first < end) {
      const last = endOfRun(timeS, first, end);
      if (last > first) runs.push({ first, last });
      first = timedFrom(timeS, last + 1, end);
    }
  });
  return runs;
}

/** The first point from `index` on that carries a time, past `last` where there is none. */
function timedFrom(timeS: Float64Array, index: number, last: number): number {
  let timed = index;
  while (timed <= last && Number.isNaN(timeS[timed])) timed += 1;
  return timed;
}

function endOfRun(timeS: Float64Array, first: number, end: number): number {
  let last = first;
  for (let index = first + 1; index <= end; index += 1) {
    if (timeS[index]! < timeS[last]!) break;
    if (!Number.isNaN(timeS[index])) last = index;
  }
  return last;
}
