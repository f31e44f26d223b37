import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Criterion } from '../../../shared-types/settings.ts';
import { nameOf, walkedAt, type SwingPoint, type WalkedFigures } from './swing-figures.ts';
import type { FiguresJob } from '../figures-job.ts';
import type { SwingSubject } from './swing-subject.ts';

/** A walk with the name its figures are kept under. */
export interface NamedWalk {
  readonly name: string;
  readonly job: FiguresJob;
}

/** The walks that points still need; those of a point follow each other, so that a thread draws its weather once. */
export function walksFor(
  subject: SwingSubject,
  walked: WalkedFigures,
  points: readonly SwingPoint[],
): readonly NamedWalk[] {
  const named = new Map<string, NamedWalk>();
  for (const point of points) {
    for (const scenario of subject.inputs.scenarios) {
      const name = nameOf(point, scenario);
      const criteria = walkedAt(subject, walked, point, scenario);
      if (criteria.length > 0 && !walked.has(name))
        named.set(name, { name, job: jobAt(subject, point, scenario, criteria) });
    }
  }
  return [...named.values()];
}

function jobAt(
  { inputs }: SwingSubject,
  { range, value }: SwingPoint,
  scenario: Scenario,
  criteria: readonly Criterion[],
): FiguresJob {
  const moved = range === null ? inputs : range.at(inputs, value);
  const { groundId } = inputs.ground;
  return {
    // What touches scenarios only leaves the ground as it is, and the tours that workers drew on it.
    ground:
      moved.ground === inputs.ground
        ? inputs.ground
        : { ...moved.ground, groundId: `${groundId} ${range?.id ?? ''} ${value}` },
    scenario: moved.scenarios[inputs.scenarios.indexOf(scenario)]!,
    asksDaysWithoutWall: criteria.includes('daysWithoutWall'),
  };
}
