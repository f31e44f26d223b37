import type { Crew } from '../../src-main/workbench/crew.ts';
import type { JobInput, JobKind, JobOutput } from '../../src-main/workbench/jobs.ts';
import { scenarioFixture } from './comparison-fixture.ts';

/** What each kind of job answers. */
export type Answers = { readonly [K in JobKind]?: (input: JobInput<K>) => JobOutput<K> };

export interface ToldCrew {
  readonly crew: Crew;
  /** The kinds of the runs started so far. */
  readonly started: JobKind[];
  /** Runs of this kind wait from now on until they are cancelled. */
  readonly hold: (kind: JobKind) => void;
}

/** The invented figures of the scenario's method. */
const invented: Answers = {
  scenario: ({ scenario: { id, label, method } }) => scenarioFixture(method, { id, label }),
  figures: ({ scenario: { id, method } }) => ({
    scenarioId: id,
    values: scenarioFixture(method).values,
    capped: false,
  }),
};

/** Answers without a walk: for tests that ask when there is work and what becomes of it, not what walks find. */
export function toldCrew(changes: Answers = {}): ToldCrew {
  const answers: Answers = { ...invented, ...changes };
  const started: JobKind[] = [];
  const held = new Set<JobKind>();
  const crew: Crew = {
    size: 1,
    start: (kind, inputs, { onProgress, onResult }) => {
      const answer = answers[kind];
      if (answer === undefined) throw new Error(`nothing is told of ${kind}`);
      started.push(kind);
      const { promise, resolve } = Promise.withResolvers<null>();
      const work = async () => {
        await new Promise((done) => setImmediate(done));
        const outputs = inputs.map((input) => answer(input));
        outputs.forEach((output, index) => onResult?.(output, index));
        onProgress(1);
        return outputs;
      };
      return { results: held.has(kind) ? promise : work(), cancel: () => resolve(null) };
    },
    close: () => undefined,
  };
  return { crew, started, hold: (kind) => void held.add(kind) };
}
