import type { CriterionValues, ScoredRow } from '../../../shared-types/comparison.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Criterion } from '../../../shared-types/settings.ts';
import { scorecard } from '../../model/judge/scorecard.ts';
import type { KitFigures } from '../kit-figures.ts';
import type { AssumptionRange } from './assumption-range.ts';
import type { SwingSubject } from './swing-subject.ts';

/** One assumption at a value, everything else as planned. */
export interface SwingPoint {
  /** null for the plan itself. */
  readonly range: AssumptionRange | null;
  readonly value: number;
}

export const planPoint: SwingPoint = { range: null, value: 0 };

/** The figures walked so far, by what was walked. */
export type WalkedFigures = Map<string, KitFigures>;

/** What the figures of a scenario at a point are kept under. */
export function nameOf({ range, value }: SwingPoint, { id }: Scenario): string {
  return `${range?.id ?? 'plan'} ${value} ${id}`;
}

/** Whether a point takes walks, done already or not; the plan is known. */
export function takesWalks(subject: SwingSubject, walked: WalkedFigures, point: SwingPoint): boolean {
  return subject.inputs.scenarios.some((scenario) => walkedAt(subject, walked, point, scenario).length > 0);
}

/** The criteria that count, are moved, and do not follow from the plan by arithmetic. */
export function walkedAt(
  subject: SwingSubject,
  walked: WalkedFigures,
  point: SwingPoint,
  scenario: Scenario,
): readonly Criterion[] {
  if (point.range === null) return subject.counted;
  const reckoned = reckonedAt(subject, walked, point, scenario);
  return movedAt(subject, point, scenario).filter((name) => reckoned[name] === undefined);
}

/** The criteria that count and are moved; none where the assumption is as planned. */
function movedAt(
  { inputs, counted }: SwingSubject,
  { range, value }: SwingPoint,
  scenario: Scenario,
): readonly Criterion[] {
  if (range === null || range.span(inputs).base === value) return [];
  return range.moves(scenario, inputs).filter((name) => counted.includes(name));
}

function reckonedAt(
  subject: SwingSubject,
  walked: WalkedFigures,
  point: SwingPoint,
  scenario: Scenario,
): Partial<CriterionValues> {
  if (movedAt(subject, point, scenario).length === 0) return {};
  return point.range?.reckoned?.(planOf(walked, scenario), point.value) ?? {};
}

function planOf(walked: WalkedFigures, scenario: Scenario): KitFigures {
  const plan = walked.get(nameOf(planPoint, scenario));
  if (plan === undefined) throw new Error(`The plan of ${scenario.id} is walked before its assumptions are.`);
  return plan;
}

/** The scorecard at a point whose walks are done. */
export function rowsAt(
  subject: SwingSubject,
  walked: WalkedFigures,
  point: SwingPoint,
): readonly ScoredRow[] {
  const { inputs, preferences, airborne } = subject;
  const rows = inputs.scenarios.map((scenario) => ({
    id: scenario.id,
    values: valuesAt(subject, walked, point, scenario),
    airborne: airborne.get(scenario.id) ?? true,
  }));
  return scorecard(rows, preferences, inputs.ground.settings.currency);
}

function valuesAt(
  subject: SwingSubject,
  walked: WalkedFigures,
  point: SwingPoint,
  scenario: Scenario,
): CriterionValues {
  const plan = planOf(walked, scenario).values;
  const at = walked.get(nameOf(point, scenario))?.values ?? plan;
  const names = walkedAt(subject, walked, point, scenario);
  const found = Object.fromEntries(names.map((name) => [name, at[name]]));
  return { ...plan, ...found, ...reckonedAt(subject, walked, point, scenario) };
}
