import { figuresJob } from './figures-job.ts';
import { drawnTours, type DrawnTours } from './ground.ts';
import { kitJob } from './kit-search/kit-job.ts';
import type { Job } from './job.ts';
import { mapRowJob } from './outlook/map-row-job.ts';
import { scenarioJob } from './scenario-job.ts';
import { upgradeJob } from './upgrade/upgrade-job.ts';

/** Every kind of job that the crew does. */
const jobs = {
  scenario: scenarioJob,
  figures: figuresJob,
  kits: kitJob,
  'map-row': mapRowJob,
  upgrade: upgradeJob,
} as const;

type Jobs = typeof jobs;
export type JobKind = keyof Jobs;
type JobOf<K extends JobKind> = ReturnType<Jobs[K]>;
export type JobInput<K extends JobKind> = Parameters<JobOf<K>>[0];
export type JobOutput<K extends JobKind> = ReturnType<JobOf<K>>;

/** A job with its kind: what a worker is sent. */
export interface JobOrder<K extends JobKind = JobKind> {
  readonly kind: K;
  readonly input: JobInput<K>;
}

export type DoOrder = <K extends JobKind>(
  order: JobOrder<K>,
  onShare: (share: number) => void,
) => JobOutput<K>;

/** Does orders one after the other; those on the same ground share its drawn tour. */
export function jobHand(): DoOrder {
  const tours = drawnTours();
  const made = new Map<JobKind, Job<never, unknown>>();
  return <K extends JobKind>({ kind, input }: JobOrder<K>, onShare: (share: number) => void) => {
    const job = (made.get(kind) ?? make(kind, tours)) as Job<JobInput<K>, JobOutput<K>>;
    made.set(kind, job);
    return job(input, onShare);
  };
}

function make(kind: JobKind, tours: DrawnTours): Job<never, unknown> {
  return jobs[kind](tours);
}
